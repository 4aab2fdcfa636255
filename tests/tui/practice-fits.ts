/** What the screens of a drill and of its result have to hold, whatever their size: every text, choice, name and patch in full. */
import type { Field } from '../../src/drills/types.js';
import { cleanText } from '../../src/text/sanitize.js';
import { chosenIndex, onScale, showsAs } from '../../src/tui/kit/fields.js';
import { voiceOf } from '../../src/tui/kit/look.js';
import type { AnyProgram } from '../../src/tui/kit/shell.js';
import type { Stage, World } from '../../src/tui/kit/stage.js';
import type { DrillScreen, ResultScreen, State } from '../../src/tui/practice/state.js';
import { resultPage, resultTexts } from '../../src/tui/result/layout.js';
import { judgedRows } from '../../src/words/judged.js';
import { lookOf } from '../../src/words/look.js';
import { sayAll } from '../../src/words/tell.js';
import { type Env, frameFaults, keyFaults, says } from './fits.js';
import type { Stills } from './still.js';

/** One state with what it is drawn by. */
export interface Sight {
  readonly state: State;
  readonly program: AnyProgram;
  readonly world: World;
  readonly stills: Stills;
  readonly env: Env;
}

const missing = (lines: readonly string[], what: string, texts: readonly string[]): string[] =>
  texts.filter((text) => text !== '' && !says(lines, text)).map((text) => `${what} not in full: ${text}`);

/** Fewest columns in which a patch is seen as one. */
const LEAST_PATCH = 6;

/** Colours of which no patch is to be seen. */
function patchFaults(raw: string, { colourLevel }: Stage, patches: readonly Patch[]): string[] {
  if (colourLevel < 3) return [];
  return patches.flatMap(({ label, reflectance }) => {
    const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(lookOf(reflectance).hex.slice(at, at + 2), 16));
    const ground = new RegExp(`\u001b\\[48;2;${r};${g};${b}m( {${LEAST_PATCH},})`);
    return ground.test(raw) ? [] : [`no patch of ${label}`];
  });
}

type Patch = ReturnType<ReturnType<World['kindOf']>['given']>[number];

/** Signs that say that there is more of a list than is seen. */
const hasMore = (lines: readonly string[]): boolean => lines.some((line) => /\d+ of \d+ .|more/.test(line));

function fieldFaults(
  lines: readonly string[],
  field: Field,
  screen: DrillScreen,
  isFocused: boolean,
): string[] {
  const { options, label } = field;
  const chosen = options[chosenIndex(field, screen.answer)];
  if (chosen === undefined) return [`${label}: nothing chosen`];
  if (!says(lines, label)) return isFocused || !hasMore(lines) ? [`row out of sight: ${label}`] : [];
  const faults = missing(lines, `choice of ${label}`, [cleanText(chosen.label, 60)]);
  if (!isFocused) return faults;
  const marked = lines.filter((line) => /❯|‹|>|</.test(line));
  const names = options.map((option) => cleanText(option.label, 60));
  return [
    ...faults,
    ...missing(marked, `cursor of ${label}`, [
      (names[chosenIndex(field, screen.answer)] as string).split(' ')[0] as string,
    ]),
    ...(showsAs(field) === 'line'
      ? missing(lines, `options of ${label}`, [names.join(' ')])
      : hasMore(lines)
        ? []
        : missing(lines, `option of ${label}`, names)),
    ...missing(lines, `note on ${label}`, [cleanText(chosen.note ?? '', 160)]),
  ];
}

/** What is missing on the screen of a drill. */
export function drillFaults(sight: Sight, screen: DrillScreen): string[] {
  const { program, world, stills, env } = sight;
  const state: State = { ...sight.state, screen };
  const { drill, fields, focus, hint } = screen;
  const still = stills.of(state, program);
  const { lines, raw } = still;
  const { settings } = state;
  const faults = frameFaults(still, state, env);
  if (settings.screenReader) return faults;
  const kind = world.kindOf(drill);
  const scene = cleanText(drill.scene, 600);
  const given = kind.given(drill);
  const goal = sayAll(kind.goalLines(drill), voiceOf(settings)).map((line) =>
    cleanText(line, 600).replace(/^([^:]{1,16}): /, '$1 '),
  );
  const unsaid = [screen.message ?? '', scene, ...goal].filter((text) => !says(lines, text));
  return [
    ...faults,
    ...missing(lines, 'question', [cleanText(drill.ask, 600)]),
    ...(hint === 'shown' ? missing(lines, 'hint', [cleanText(drill.hint ?? '', 600)]) : []),
    ...fields.flatMap((field, at) =>
      fieldFaults(lines, onScale(field, settings.valueScale), screen, at === focus),
    ),
    ...missing(
      lines,
      'name of a colour',
      given.map(({ label }) => label),
    ),
    // At the very tightest a colour goes with its line of the goal: with another row in focus it is there again.
    ...patchFaults(
      raw,
      state,
      given.filter(({ label }) => focus === 0 || !unsaid.some((line) => line.startsWith(`${label} `))),
    ),
    ...(unsaid.length === 0 ? [] : textFaults(sight, state, unsaid, lines)),
    ...(focus === 0 ? keyFaults(sight, state, lines) : []),
  ];
}

/** Where the text of a drill is cut, a key that is told there opens it whole. */
function textFaults(
  { program, stills, env }: Sight,
  state: State,
  texts: readonly string[],
  lines: readonly string[],
): string[] {
  if (!lines.some((line) => line.includes('more: s')))
    return texts.map((text) => `text not in full, and no key for it: ${text}`);
  const reduce = program.update;
  let open = reduce(state, { type: 'key', key: 's', at: 0 });
  const seen: string[] = [];
  for (let page = 0; page < 3; page++) {
    const still = stills.of(open, program);
    const faults = frameFaults(still, open, env);
    if (faults.length > 0) return faults;
    seen.push(...still.lines);
    const next = reduce(open, { type: 'key', key: 'page-down', at: 0 });
    if (JSON.stringify(next.overlay) === JSON.stringify(open.overlay)) break;
    open = next;
  }
  return missing(seen, 'text on its panel', texts);
}

/** What is missing on the screen of a result. */
export function resultFaults(sight: Sight, screen: ResultScreen): string[] {
  const { program, world, stills, env } = sight;
  const state: State = { ...sight.state, screen };
  const still = stills.of(state, program);
  const { lines, raw } = still;
  const faults = frameFaults(still, state, env);
  const { settings } = state;
  if (settings.screenReader) return faults;
  const { answered: entry } = screen;
  const { grade, kept } = entry;
  const voice = voiceOf(settings);
  const steps = grade.steps ?? [];
  const swatches =
    steps.length < 2
      ? grade.swatches
      : steps.flatMap(({ name, yours, best }) =>
          [yours, best].flatMap((film) => (film === undefined ? [] : { label: name, reflectance: film })),
        );
  const page = resultPage(state, world, screen);
  return [
    ...faults,
    ...missing(lines, 'mark', [
      `${entry.mark} of 100`,
      cleanText(world.kindOf(entry.drill).label(entry.drill, entry.answer, voice), 400),
    ]),
    ...missing(
      lines,
      'row',
      judgedRows(grade, voice).map(({ text }) => text),
    ),
    ...missing(lines, 'comparison', [kept?.compared ?? '']),
    ...missing(
      lines,
      'name of a colour',
      swatches.map(({ label }) => label),
    ),
    ...patchFaults(raw, state, swatches),
    ...missing(page.lines, 'text', resultTexts(screen, settings, state.colourLevel > 0)),
    ...missing(lines, 'line of the text', page.lines.slice(0, page.rows)),
    ...keyFaults(sight, state, lines),
  ];
}
