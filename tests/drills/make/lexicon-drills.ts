/** Drills made up from the lexicon, and what must hold of each whatever its seed: a few in the quick run, three thousand in the long one. */
import { seedOf } from '../../../src/chance/draw.js';
import { checkDrill } from '../../../src/drills/check.js';
import type { Drill } from '../../../src/drills/kinds/index.js';
import type { MixDrill } from '../../../src/drills/kinds/mix/schema.js';
import { findSubject, SUBJECTS } from '../../../src/drills/lexicon.js';
import { neighbours } from '../../../src/drills/look.js';
import { GENERATED_FAMILIES, generateDrill } from '../../../src/drills/make/index.js';
import { type Laid, seeLaid } from '../../../src/washes/index.js';
import { kindOf, paintOf, STUDIO } from '../../studio.js';

/** Boxes of paints, taken in turn: the named ones, and every measured paint. */
export const BOXES: readonly (readonly string[])[] = [
  ...STUDIO.palettes.map(({ pigments }) => pigments),
  STUDIO.paints.filter(({ evidence }) => evidence === 'measured').map(({ id }) => id),
];
export const MIX_FAMILIES = [
  'darken-bright',
  'dull-on-purpose',
  'neutraliser',
  'grey-lean',
  'deep-dark',
  'tinting-strength',
];

/** So many drills, spread over families, levels, boxes and seeds. */
export function* someDrills(count: number, families = GENERATED_FAMILIES): Generator<Drill> {
  for (let index = 0; index < count; index++) {
    const family = families[index % families.length] as string;
    const level = 1 + (Math.floor(index / families.length) % 5);
    const palette = BOXES[Math.floor(index / (5 * families.length)) % BOXES.length] as readonly string[];
    yield generateDrill(STUDIO, { seed: seedOf('made', index), family, level, palette });
  }
}

const turn = (a: number, b: number): number => Math.abs(((a - b + 540) % 360) - 180);
const within = (x: number, [low, high]: readonly [number, number]): boolean => x >= low && x <= high;

/** Most degrees of turn by aim; our own figures, common practice, no source. */
const BOUND: Readonly<Record<string, number>> = { shade: 25, rich: 40, dull: 25, distance: 30 };

/** Degrees by which less light, wet or air may turn a hue beyond a thing's own; our own figure, common practice, no source. */
const TURN = 10;

/** The colours that a drill of another kind shows under the name of a thing. */
function named(drill: Drill): readonly (readonly [string, Laid])[] {
  const own = SUBJECTS.find(({ name }) => drill.title.toLowerCase().startsWith(`${name.slice(4)}, `));
  switch (drill.kind) {
    case 'sort-values':
      return drill.areas.map(({ name, laid }) => [name, laid]);
    case 'diagnosis':
      return drill.areas.map(({ name, laid }) => [name, laid]);
    case 'choose':
      return drill.family === 'three-values'
        ? drill.options.map(({ label, laid }) => [label ?? '', laid])
        : [];
    case 'shadow-values':
      return drill.things.flatMap(({ name, lit }) => (typeof lit === 'number' ? [] : [[name, lit] as const]));
    case 'order':
      return drill.family === 'ways-of-applying'
        ? drill.items.map(({ laid }) => [own?.name.slice(4) ?? '', laid])
        : [];
    case 'drying':
      return [[own?.name.slice(4) ?? '', drill.wash]];
    case 'shade-chroma':
      return [[own?.name.slice(4) ?? '', drill.lit]];
    default:
      return [];
  }
}

/** Every colour under a thing's name is one of its own, lit or shaded. */
function namedFaults(drill: Drill): string[] {
  return named(drill).flatMap(([name, laid]) => {
    const { step, chroma, hue } = seeLaid(STUDIO, laid).colour;
    const isOwn = SUBJECTS.filter((subject) => subject.name === `the ${name}`).some((subject) => {
      const fits = [subject.lit, subject.shaded].some(
        (range) => within(step, range.step) && chroma <= range.chroma[1],
      );
      const turned = subject.hue === undefined || chroma < 12 ? 0 : turn(hue, subject.hue.near);
      return fits && turned <= (subject.hue?.within ?? 0) + TURN;
    });
    return isOwn ? [] : [`${drill.id}: ${name} at step ${step}, chroma ${chroma}, hue ${hue}`];
  });
}

function mixFaults(drill: MixDrill): string[] {
  const kind = kindOf(drill);
  const answer = kind.best(drill);
  const { value, chroma, hue } = kind.grade(drill, answer);
  if (value === undefined || chroma === undefined) return ['no figures'];
  const { aim } = drill.goal;
  const subject = findSubject(drill.subject ?? '');
  if (subject === undefined) return ['no subject'];
  const faults: string[] = [];
  const say = (isFault: boolean, what: string): void => {
    if (isFault) faults.push(`${drill.id} (${aim}, ${subject.id}): ${what}`);
  };
  // The subject's own colour first, where it is the subject's own.
  if (aim !== 'neutral' && aim !== 'lean') {
    say(!within(value.before, subject.lit.step), `starts at step ${value.before}`);
    say(!within(chroma.before, subject.lit.chroma), `starts at chroma ${chroma.before}`);
    if (hue !== undefined && subject.hue !== undefined)
      say(turn(hue.before, subject.hue.near) > subject.hue.within, `starts at hue ${hue.before}`);
  } else {
    say(subject.hue !== undefined, 'a grey or a dark that has a hue');
  }
  const ranges =
    aim === 'shade' || aim === 'rich'
      ? [subject.shaded]
      : aim === 'distance'
        ? // Air makes it up to a step and a half lighter, our own figure, common practice, no source.
          [{ ...subject.lit, step: [subject.lit.step[0] - 1.5, subject.lit.step[1]] as const }]
        : [subject.lit, subject.shaded];
  say(
    !ranges.some(({ step, chroma: c }) => within(value.after, step) && chroma.after <= c[1]),
    `ends at step ${value.after}, chroma ${chroma.after}`,
  );
  if (hue !== undefined && chroma.after >= 12) {
    if (aim !== 'lean') say(turn(hue.before, hue.after) > (BOUND[aim] as number), 'turns the hue');
    if (subject.hue !== undefined)
      say(turn(hue.after, subject.hue.near) > subject.hue.within + TURN, `ends at hue ${hue.after}`);
  }
  const line = chroma.shadingLine;
  const margin = Math.max(5, 0.15 * line);
  if (aim === 'shade') {
    say(chroma.after > line + margin, 'a shade that glows');
    say(chroma.after < line - margin, 'a shade of mud');
  }
  if (aim === 'shade' || aim === 'rich') say(value.after < value.before + 0.5, 'hardly darker');
  if (aim === 'distance') say(value.after > value.before - 0.3, 'farther off and no lighter');
  if (aim === 'dull' || aim === 'lean')
    say(Math.abs(value.after - value.before) > 0.6, 'the value is not held');
  if (aim === 'dull') {
    say(chroma.after > 0.75 * chroma.before, 'hardly duller');
  }
  if (drill.family === 'deep-dark') {
    const paints = [...drill.tray, ...Object.keys(drill.start.paints)].map((id) => paintOf(id));
    const blacks = paints.filter(({ ci }) => ci.some((name) => name.startsWith('PBk')));
    say(blacks.length > 0, `a black in the box: ${blacks.map(({ id }) => id).join(', ')}`);
  }
  if (drill.family === 'tinting-strength') {
    const { second = drill.tray[0] as string } = answer;
    const best = paintOf(second);
    for (const id of Object.keys(drill.start.paints)) {
      say(paintOf(id).fullStrength < 2 * best.fullStrength, `${best.id} is not the stronger of it and ${id}`);
    }
    say(best.strengthEvidence === 'assumed', `the strength of ${best.id} is not known`);
    say(
      best.ci.some((name) => /^(PBr7|PY4[23]|PR10[12])$/.test(name)),
      `an earth as the strong paint: ${best.id}`,
    );
  }
  say(!failsVisibly(drill), 'nothing tempts that fails to the eye');
  return faults;
}

/** Is there an answer one choice away that marks under 55 and looks wrong beside the best? */
function failsVisibly(drill: MixDrill): boolean {
  const kind = kindOf(drill);
  const answer = kind.best(drill);
  const best = kind.grade(drill, answer);
  return neighbours(kind.fields(drill), answer).some((other) => {
    const grade = kind.grade(drill, other);
    if (grade.mark >= 55 || grade.value === undefined || grade.chroma === undefined) return false;
    const [a, b] = [best.chroma?.after ?? 0, grade.chroma.after];
    const isColour = Math.min(a, b) >= 5;
    const turned = isColour && best.hue !== undefined && grade.hue !== undefined;
    return (
      Math.abs(grade.value.after - (best.value?.after ?? 0)) >= 0.5 ||
      Math.abs(a - b) >= 10 ||
      (Math.abs(a - b) >= a / 3 && Math.abs(a - b) >= 4) ||
      (turned && turn(best.hue?.after ?? 0, grade.hue?.after ?? 0) >= 20)
    );
  });
}

/** What speaks of bright light in a scene. */
const BRIGHT = /(?<!out of the |Salt and )\bsun\b|\bNoon\b|side light|bright morning/i;

/** What no painter would sign, whatever the colours; common practice, no source. */
function craftFaults(drill: Drill): string[] {
  const faults: string[] = [];
  const say = (isFault: boolean, what: string): void => {
    if (isFault) faults.push(`${drill.id}: ${what}`);
  };
  if (drill.kind === 'mix') {
    const [low, high] = drill.goal.value;
    const isDark = (low + high) / 2 >= 5.8;
    say(isDark && drill.goal.aim !== 'shade' && BRIGHT.test(drill.scene), 'a dark in the sun');
    say(
      drill.glazes.some((glaze) => glaze > 0.6),
      'a glaze as thick as a coat',
    );
    say(drill.glazes.length > 0 && drill.start.strength >= 0.85, 'a glaze over thick cream');
    const cis = [...drill.tray, ...Object.keys(drill.start.paints)].map((id) => paintOf(id).ci);
    const start = Object.keys(drill.start.paints).map((id) => paintOf(id).ci);
    const has = (list: typeof cis, name: RegExp): boolean =>
      list.some((ci) => ci.some((one) => name.test(one)));
    say(has(start, /^PR83$/) && has(cis, /^PB(15|27|28|29|60)/), 'alizarin crimson and a blue');
    say(has(cis, /^PR83$/) && has(start, /^PB(15|27|28|29|60)/), 'a blue and alizarin crimson');
  }
  if (drill.kind === 'washes') say(drill.waters.length <= drill.blocks.length, 'no wash too many');
  if (drill.kind === 'diagnosis') {
    const glazed = drill.repairs.map(({ repair }) =>
      'glaze' in repair ? Object.keys(repair.glaze.paints).join() : '',
    );
    say(new Set(glazed).size < 2, 'every repair with one paint');
    const named = drill.areas.filter(({ name }) => drill.title.toLowerCase().includes(name));
    say(named.length > 0 && named.length < drill.areas.length, 'some areas in the title, not all');
  }
  return faults;
}

const PICTURED = new Set(SUBJECTS.map(({ picture }) => picture));

/** All that is wrong with a made drill. */
export function madeFaults(drill: Drill): string[] {
  const { faults, look } = checkDrill(STUDIO, drill, 7);
  const bestMark = look.best.grade.mark;
  const trapMark = look.worst.grade.mark;
  const { title, scene, picture } = drill;
  const words = [title, scene, drill.hint ?? ''];
  return [
    ...faults.map((fault) => `${drill.id}: ${fault}`),
    bestMark === 100 ? '' : `${drill.id}: the best marks ${bestMark}`,
    trapMark < 55 ? '' : `${drill.id}: the worst neighbour marks ${trapMark}`,
    ...(drill.kind === 'mix' ? mixFaults(drill) : namedFaults(drill)),
    ...craftFaults(drill),
    drill.kind !== 'mix' || (picture !== undefined && PICTURED.has(picture)) ? '' : `${drill.id}: no picture`,
    words.some((text) => /\s{2}|\s[.,;:]|undefined|\b(\w+) \1\b|[{}[\]<>|]/.test(text))
      ? `${drill.id}: ${words.join(' / ')}`
      : '',
    scene.length <= 400 && title.length <= 60 && /^[A-Z].*[.?]$/.test(scene) ? '' : `${drill.id}: ${scene}`,
  ].filter((fault) => fault !== '');
}
