import { describe, expect, it } from 'vitest';
import { readPaintingRequest, readScale } from '../../src/commands/painting-request.js';
import { UsageError } from '../../src/errors.js';

describe('what is asked of a painting', () => {
  it('is read from its options', () => {
    expect(
      readPaintingRequest({
        white: '0.1,0.2=8.5',
        crop: '0.1,0,0.5,1',
        mass: '2',
        goal: 'dull',
        values: ['3', '3'],
      }),
    ).toEqual({
      byHand: { white: { x: 0.1, y: 0.2, value: 8.5 }, cut: { x: 0.1, y: 0, width: 0.5, height: 1 } },
      mass: { at: 1, aim: 'dull' },
      studies: [3],
    });
    expect(readPaintingRequest({ corners: '0,0,1,0.1,1,1,0,0.9', grey: true, out: 'a.png' })).toEqual({
      byHand: {
        corners: [
          { x: 0, y: 0 },
          { x: 1, y: 0.1 },
          { x: 1, y: 1 },
          { x: 0, y: 0.9 },
        ],
      },
      studies: ['grey'],
    });
    expect(readScale('black-first')).toBe('black-first');
  });

  it.each([
    [{ white: '0.5' }, /--white takes x,y or x,y=V/],
    [{ white: '0.5,2' }, /shares of the width and the height, from 0 to 1; 2 is not/],
    [{ white: '0.5,x' }, /each number of --white must be a number, got "x"/],
    [{ white: '0.5,0.5=12' }, /Munsell value of a card, 1 to 10/],
    [{ white: '0.5,0.5=' }, /the Munsell value of --white must be a number/],
    [{ white: '0.5,0.5=8=9' }, /--white takes x,y or x,y=V/],
    [{ crop: '0,0,1' }, /--crop takes x,y,width,height/],
    [{ crop: '0.5,0.5,0.6,0.2' }, /nothing beyond the picture/],
    [{ crop: '0,0,0,1' }, /with something in it/],
    [{ corners: '0,0,1,0,1,1' }, /--corners takes four places/],
    [{ corners: '0,0,0,1,1,1,1,0' }, /do not go around a sheet in that order/],
    [{ corners: '0,0,1,1,1,0,0,1' }, /do not go around a sheet in that order/],
    [{ corners: '0.5,0.5,0.5,0.5,0.5,0.5,0.5,0.5' }, /do not go around a sheet/],
    [{ corners: '0,0,1,0,1,1,0,1', crop: '0,0,1,1' }, /both given/],
    [{ mass: '0' }, /--mass takes the number of a mass/],
    [{ mass: '1.5' }, /--mass takes the number of a mass/],
    [{ goal: 'rich' }, /--goal is for one mass/],
    [{ mass: '1', goal: 'bright' }, /--goal takes shade, rich, dull or distance; not "bright"/],
    [{ values: ['4'] }, /--values takes 2, 3 or 5, got 4/],
    [{ out: 'a.png' }, /--out names the file of a study/],
    [{ grey: true, values: ['3'], out: 'a.png' }, /several studies are asked for/],
  ])('%j is refused', (options, line) => {
    expect(() => readPaintingRequest(options)).toThrow(UsageError);
    expect(() => readPaintingRequest(options)).toThrow(line);
  });

  it('a scale that is none is refused', () => {
    expect(() => readScale('upside')).toThrow(/--scale takes paper-first or black-first, got "upside"/);
  });
});
