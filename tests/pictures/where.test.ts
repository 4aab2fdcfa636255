/** Which picture a drill is set in, where its colours lie, and what refuses a place that is none. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { SUBJECTS } from '../../src/drills/lexicon.js';
import { filesOfFolder, readDrillFolder } from '../../src/files/exercises.js';
import { readPictures } from '../../src/files/pictures.js';
import {
  drillScenes,
  findPicture,
  liesIn,
  namedArea,
  type Picture,
  painted,
} from '../../src/pictures/index.js';
import { SHIPPED_DRILLS, SHIPPED_PICTURES } from '../exercises.js';
import { kindOf, STUDIO } from '../studio.js';

const PICTURES = SHIPPED_PICTURES;
const DRILLS = SHIPPED_DRILLS;
const ROOFS = findPicture(PICTURES, 'harbour-roofs') as Picture;

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'pictures-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** A folder with the drills of one shipped file, altered. */
function withDrills(alter: (text: string) => string): void {
  writeFileSync(join(folder, 'holes.yaml'), alter(readFileSync('exercises/deep-dark/holes.yaml', 'utf8')));
}

it('the drill decides, then its subject, then the picture', () => {
  const own = { start: 'wall', passage: 'wall-turned' };
  expect(liesIn(ROOFS, { lies: own, subject: 'roof-alley' })).toEqual(own);
  expect(liesIn(ROOFS, { subject: 'roof-alley' })).toEqual({ start: 'wall-turned', passage: 'alley' });
  expect(liesIn(ROOFS, { subject: 'constructor' })).toEqual(ROOFS.lies);
  expect(liesIn(ROOFS, { lies: { start: 'moat', passage: 'roof' } })).toEqual(ROOFS.lies);
});

it('a drill set in a picture or an area that there is not is refused, with its line', () => {
  withDrills((text) => text.replace('picture: tunnel-mouth', 'picture: tunnel-mouht'));
  expect(() => readDrillFolder(STUDIO, folder, PICTURES)).toThrow(
    /^holes\.yaml:\d+: drills\.\d+\.picture: no picture is called "tunnel-mouht"\. Did you mean/,
  );
  withDrills((text) =>
    text.replace('picture: tunnel-mouth', 'picture: tunnel-mouth\n    lies: { start: arch, passage: mouht }'),
  );
  expect(() => readDrillFolder(STUDIO, folder, PICTURES)).toThrow(
    /lies\.passage: tunnel-mouth has no area "mouht"/,
  );
  withDrills((text) => text.replace('picture: tunnel-mouth', 'lies: { start: arch, passage: mouth }'));
  expect(() => readDrillFolder(STUDIO, folder, PICTURES)).toThrow(/lies: needs a picture/);
});

it('a folder of drills may bring its own pictures, which are not read as drills', () => {
  mkdirSync(join(folder, 'pictures'));
  const own = readFileSync('exercises/pictures/tunnel-mouth.yaml', 'utf8').replace(
    'id: tunnel-mouth',
    'id: own-tunnel',
  );
  writeFileSync(join(folder, 'pictures', 'own-tunnel.yaml'), own);
  withDrills((text) => text.replace('picture: tunnel-mouth', 'picture: own-tunnel'));
  expect(readDrillFolder(STUDIO, folder, PICTURES).some(({ picture }) => picture === 'own-tunnel')).toBe(
    true,
  );
  expect(filesOfFolder(folder)).toEqual([
    join(folder, 'holes.yaml'),
    join(folder, 'pictures', 'own-tunnel.yaml'),
  ]);
  writeFileSync(join(folder, 'pictures', 'own-tunnel.yml'), own);
  expect(() => readPictures(STUDIO, folder)).toThrow(/another file holds a picture called own-tunnel/);
});

it('every drill is a scene before and after its answer: the start lies, the passage is open, then laid', () => {
  const scenes = drillScenes(STUDIO, PICTURES);
  let opened = 0;
  for (const drill of DRILLS) {
    const picture = findPicture(PICTURES, drill.picture);
    if (picture === undefined) continue;
    const kind = kindOf(drill);
    const before = scenes(drill)?.painted;
    const after = scenes(drill, kind.best(drill))?.painted;
    const { start, passage } = liesIn(picture, drill);
    if (before?.looks[passage]?.kind !== 'open') continue;
    opened++;
    expect(before.looks[start]?.kind).toBe('laid');
    if (drill.kind === 'mix') {
      const look = after?.looks[passage];
      const yours = kind.grade(drill, kind.best(drill)).value?.after;
      expect(look?.kind, drill.id).toBe('laid');
      if (look?.kind === 'laid' && yours !== undefined) expect(look.tone.colour.step).toBeCloseTo(yours, 6);
    }
  }
  expect(opened).toBeGreaterThan(50);
});

/** What a text speaks of: its words in the singular, without those that only say where or which. */
function thingsIn(text: string): Set<string> {
  const where = /^(the|a|of|in|on|lit|sides?|turned|away|shaded?|under|far|near|open|edge|inside|middle)$/;
  const found = text.toLowerCase().match(/[a-z]+/g) ?? [];
  return new Set(found.filter((word) => !where.test(word)).map((word) => word.replace(/s$/, '')));
}

it('a colour lies in what its drill speaks of: named in the text, or the picture of its subject', () => {
  const scenes = drillScenes(STUDIO, PICTURES);
  let seen = 0;
  for (const drill of DRILLS) {
    const scene = scenes(drill);
    const picture = findPicture(PICTURES, drill.picture);
    if (scene?.start === undefined || picture === undefined) continue;
    seen++;
    const { subject } = drill as { readonly subject?: string };
    if (SUBJECTS.some(({ id, picture: own }) => id === subject && own === picture.id)) continue;
    const told = thingsIn(`${drill.title} ${drill.scene} ${drill.ask}`);
    const lies = picture.areas.filter(({ id }) => id === scene.start || id === scene.passage);
    const shown = thingsIn(lies.map(({ words }) => words).join(' '));
    expect(
      [...shown].some((thing) => told.has(thing)),
      `${drill.id}: ${[...shown].join(', ')}`,
    ).toBe(true);
  }
  expect(seen).toBeGreaterThan(120);
});

it('an area is found by its id, its words and its other names, and by nothing near them', () => {
  const tree = findPicture(PICTURES, 'pear-tree') as Picture;
  expect(['far field', 'lit crown', 'inner green', 'trunk'].map((name) => namedArea(tree, name))).toEqual([
    'far-field',
    'crown',
    'crown-inside',
    'trunk',
  ]);
  expect(['green', 'the', '', 'trunk side'].map((name) => namedArea(tree, name))).toEqual(
    Array(4).fill(undefined),
  );
});

it('the washes of a passage to be judged lie in the areas of their names, and the repair after the answer', () => {
  const scenes = drillScenes(STUDIO, PICTURES);
  const judged = DRILLS.filter((drill) => drill.kind === 'diagnosis' && scenes(drill) !== undefined);
  expect(judged.length).toBeGreaterThan(5);
  for (const drill of judged) {
    const kind = kindOf(drill);
    const picture = findPicture(PICTURES, drill.picture) as Picture;
    const tones = (scene = scenes(drill)) =>
      Object.entries(scene?.painted.looks ?? {}).map(([id, look]) => [
        id,
        look.kind === 'laid' && look.tone.hex,
      ]);
    for (const { label, reflectance } of kind.given(drill)) {
      const area = namedArea(picture, label) as string;
      const alone = painted(STUDIO, picture, { [area]: { reflectance } }).looks[area];
      expect(tones()).toContainEqual([area, alone?.kind === 'laid' && alone.tone.hex]);
    }
    const after = scenes(drill, kind.best(drill));
    const mended = tones(after).filter(([id]) => id !== after?.passage);
    expect(mended, 'all else stays').toEqual(tones().filter(([id]) => id !== after?.passage));
  }
});

it('a drill is painted once, and each answer to it once', () => {
  const scenes = drillScenes(STUDIO, PICTURES);
  const drill = DRILLS.find(({ id }) => id === 'harbour-roof-shade') as (typeof DRILLS)[number];
  const best = kindOf(drill).best(drill);
  expect(scenes(drill)).toBe(scenes(drill));
  expect(scenes(drill, { ...best })).toBe(scenes(drill, best));
  expect(scenes(drill, best)).not.toBe(scenes(drill));
  expect(scenes({ ...drill, picture: undefined })).toBeUndefined();
});
