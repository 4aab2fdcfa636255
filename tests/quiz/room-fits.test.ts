/** The room where it is tightest: nothing is cut or out of sight, every key is told. The long run has every size and question. */
import { afterEach, describe, expect, it } from 'vitest';
import type { Size } from '../../src/tui/kit/stage.js';
import { letterSizes } from '../../src/tui/quiz/room/large.js';
import { slideLayout } from '../../src/tui/quiz/room/layout.js';
import { some } from '../cases.js';
import { Stills } from '../tui/still.js';
import { COLOURED, OTHER_FORMS } from '../tui/walk.js';
import { roomOn } from './room-stands.js';
import { FULLEST, faultsOf, handout, TIGHTEST } from './room-walk.js';

let stills: Stills | undefined;
afterEach(() => stills?.close());

describe('the room', () => {
  it('has room at 60 by 18 for the longest answers of a kind', () => {
    stills = new Stills();
    expect(faultsOf(TIGHTEST, COLOURED, some(FULLEST, 2), stills)).toEqual([]);
  });

  it.each(some(OTHER_FORMS, 2))('has room with $name', (form) => {
    stills = new Stills(form.isSpoken);
    expect(faultsOf(TIGHTEST, form, FULLEST.slice(0, 4), stills)).toEqual([]);
  });

  it('shows most pictures from 80 columns on, and at 200 by 60 letters and pictures that fill it', () => {
    const pictured = (size: Size) => {
      const program = roomOn(handout, size);
      return handout.questions
        .flatMap(({ drill }, place) => (program.world.sceneOf(drill) === undefined ? [] : [place]))
        .map((place) =>
          slideLayout(program.room, { ...program.initial, place }, letterSizes(program.glyphs)),
        );
    };
    const large = pictured({ columns: 200, rows: 60 });
    expect(large.length).toBeGreaterThan(5);
    for (const { sheet, size } of large) {
      expect(sheet?.lines).toBeGreaterThan(20);
      expect(size).toBe('full');
    }
    const small = pictured({ columns: 80, rows: 24 });
    expect(small.filter(({ sheet }) => sheet !== undefined).length / small.length).toBeGreaterThan(0.5);
  });
});
