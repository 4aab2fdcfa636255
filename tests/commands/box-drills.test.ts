/** Which written drills hold in a box of one’s own. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { keepOwnBox } from '../../src/commands/box-change.js';
import { drillsOfBox, leftOutWords } from '../../src/commands/box-drills.js';
import { checkDrill } from '../../src/drills/check.js';
import { paintsIn } from '../../src/drills/paint-names.js';
import { shippedDrills } from '../../src/files/shipped.js';
import { boxStudio, revisionOf } from '../../src/paints/index.js';
import { type OwnBox, openProfile, type Profile, paletteOf } from '../../src/profile/index.js';
import { freshHome } from '../profile/helpers.js';
import { STUDIO } from '../studio.js';

freshHome();

const drills = await shippedDrills(STUDIO);
const FIVE = ['burnt-sienna', 'ultramarine-blue', 'cadmium-yellow', 'alizarin-crimson', 'sap-green'];
const OWN: OwnBox = {
  name: 'studio',
  paints: FIVE.map((paint) =>
    paint === 'burnt-sienna' ? { paint, name: 'my sienna', strength: 2 } : { paint },
  ),
};
const nothingKept = { path: undefined, engine: 'test' };

async function profileWith(box: OwnBox, used = box.name): Promise<Profile> {
  keepOwnBox(await openProfile(), box.name, () => box);
  return openProfile({ palette: used });
}

describe('the written drills of a box', () => {
  const box = paletteOf(STUDIO, OWN);
  const held = drillsOfBox(STUDIO, box, drills, nothingKept);

  it('are those of its paints, and all are accounted for', () => {
    for (const drill of held.drills)
      if (drill.kind !== 'worked') expect(FIVE).toEqual(expect.arrayContaining(paintsIn(drill)));
    expect(held.drills.length + held.notOwned + held.unsound).toBe(drills.length);
    expect(leftOutWords(box, held)).toBe(
      `With the studio box ${held.notOwned + held.unsound} of ${drills.length} written drills are left out: ${held.notOwned} need other paints, ${held.unsound} do not hold at its strengths.`,
    );
  });

  it('are checked again where a strength was corrected: what stays in passes, some fall out', () => {
    const own = boxStudio(STUDIO, box);
    const ids = new Set(held.drills.map(({ id }) => id));
    const within = drills.filter(
      (drill) => drill.kind === 'worked' || paintsIn(drill).every((id) => FIVE.includes(id)),
    );
    const doubtful = within.filter((drill) => paintsIn(drill).includes('burnt-sienna'));
    for (const drill of doubtful)
      expect([drill.id, checkDrill(own, drill).faults.length === 0]).toEqual([drill.id, ids.has(drill.id)]);
    expect(held.unsound).toBeGreaterThan(0);
    const plain = { ...box, strengths: {} };
    expect(drillsOfBox(STUDIO, plain, drills, nothingKept)).toMatchObject({
      unsound: 0,
      notOwned: held.notOwned,
    });
  });

  it('are checked once for a revision: what was found is kept, and is not needed', async () => {
    const profile = await profileWith(OWN);
    const path = profile.files?.checked ?? '';
    expect(drillsOfBox(STUDIO, box, drills, { path, engine: 'test' })).toEqual(held);
    const kept = readFileSync(path, 'utf8');
    const [key = ''] = Object.keys(JSON.parse(kept));
    expect(key.startsWith(`${revisionOf(box)} `)).toBe(true);
    // Said to be otherwise there, and so taken from there.
    const { writeFileSync } = await import('node:fs');
    writeFileSync(path, JSON.stringify({ [key]: [] }));
    expect(drillsOfBox(STUDIO, box, drills, { path, engine: 'test' }).unsound).toBe(0);
    expect(drillsOfBox(STUDIO, box, drills, { path, engine: 'later' }).unsound).toBe(held.unsound);
    writeFileSync(path, '{"x": [1], ');
    expect(drillsOfBox(STUDIO, box, drills, { path, engine: 'test' })).toEqual(held);
  });
});
