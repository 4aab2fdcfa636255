/** `mudlark` and `mudlark practise`: fills the ports of the screens with the drills, the record and the clock. */

import { findFamily } from '../drills/families.js';
import { type Drill, kindOf } from '../drills/kinds/index.js';
import { isOurs, UsageError } from '../errors.js';
import { shipped, shippedPictures } from '../files/shipped.js';
import { libraryStudio, perStudio } from '../paints/index.js';
import { drillScenes } from '../pictures/scene.js';
import type { OwnBox } from '../profile/own-studio.js';
import { openProfile, type Profile } from '../profile/profile.js';
import { keepSettings, type SettingFlags } from '../profile/settings.js';
import type { PracticePlan } from '../quiz/plan.js';
import { didYouMean } from '../text/nearest.js';
import { ASCII, glyphsFor } from '../tui/kit/glyphs.js';
import { noTerminalReason, terminalFacts } from '../tui/kit/terminal-check.js';
import type { BoxKept, Saved, SettingsPatch, StartAt, TuiDeps } from '../tui/practice/deps.js';
import { changeBox, copyBox, followName } from './box-change.js';
import { FAMILY_REFS } from './family-refs.js';
import { mixtureShelf } from './kept-mixtures.js';
import { boxInUse, boxNotice, learnerStudio } from './learner.js';
import { PracticeRun } from './practice-run.js';
import { progressText } from './progress.js';

/** Options as typed. */
export interface PractiseOptions {
  readonly box?: string;
  /** What `--box` was called before. */
  readonly palette?: string;
  readonly minutes?: string;
  readonly learner?: string;
  readonly plan?: string;
  readonly level?: string;
  readonly seed?: string;
  readonly screenReader?: boolean;
  readonly color?: boolean;
}

/** @throws UsageError for anything but 1 to 240 whole minutes */
function readMinutes(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const minutes = Number(text);
  if (!/^\d{1,3}$/.test(text) || minutes < 1 || minutes > 240) {
    throw new UsageError(`--minutes takes a whole number from 1 to 240, not "${text.slice(0, 40)}"`);
  }
  return minutes;
}

/** @throws UsageError for anything but 1 to 5 */
function readLevel(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  if (!/^[1-5]$/.test(text)) {
    throw new UsageError(`--level takes 1 (worked) to 5 (cold), not "${text.slice(0, 40)}"`);
  }
  return Number(text);
}

/** @throws UsageError for anything but a whole number of up to nine digits */
function readSeed(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  if (!/^\d{1,9}$/.test(text)) {
    throw new UsageError(`--seed takes a whole number of up to nine digits, not "${text.slice(0, 40)}"`);
  }
  return Number(text);
}

function requireFamily(id: string | undefined): string | undefined {
  if (id === undefined || findFamily(id) !== undefined) return id;
  const ids = FAMILY_REFS.map((family) => family.id);
  throw new UsageError(
    `no family of drills is called "${id.slice(0, 60)}".${didYouMean(id, ids)} See: mudlark drills`,
  );
}

async function keep(profile: Profile, patch: SettingsPatch): Promise<Saved> {
  try {
    await keepSettings(profile.paths.config, patch);
    return { saved: true };
  } catch (error) {
    if (!isOurs(error)) throw error;
    return { saved: false, note: error.message };
  }
}

/** Changes a box, or puts one together; the box in use is taken as it is then, whatever it is called. */
async function keepBox(
  profile: Profile,
  practice: PracticeRun,
  id: string,
  change: () => OwnBox,
): Promise<BoxKept> {
  try {
    const isUsed = practice.box.box.id === id;
    const { name } = change();
    practice.takeBox(isUsed ? name : undefined);
    await followName(profile, id, name);
    return { saved: true, id: name };
  } catch (error) {
    if (!isOurs(error)) throw error;
    practice.takeBox();
    return { saved: false, note: error.message };
  }
}

/** Flags of the command line as the profile takes them. */
function settingFlags({ palette, box = palette, learner, screenReader }: PractiseOptions): SettingFlags {
  return {
    ...(box === undefined ? {} : { palette: box }),
    ...(learner === undefined ? {} : { learner }),
    ...(screenReader === true ? { screenReader: 'yes' } : {}),
  };
}

/**
 * Runs the screens.
 * @returns the exit code
 * @throws UsageError for wrong options; DataError for a plan that cannot be read
 */
export async function practise(
  family: string | undefined,
  options: PractiseOptions,
  home: boolean,
  version: string,
): Promise<number> {
  const library = libraryStudio();
  const minutes = readMinutes(options.minutes);
  const seed = readSeed(options.seed);
  const level = readLevel(options.level);
  const wanted = requireFamily(family);
  const profile = await openProfile(settingFlags(options));
  const shelf = learnerStudio(profile, library);
  const box = boxInUse(shelf, profile);
  const plan = options.plan === undefined ? undefined : await readPlanFile(options.plan);
  const reason = noTerminalReason(terminalFacts(), 'mudlark grade, mix or drills (see: mudlark --help)');
  if (reason !== undefined) {
    process.stderr.write(`${reason}\n`);
    return 2;
  }
  const { drills, chances } = await shipped(library);
  const pictures = await shippedPictures(library);
  const scenesIn = perStudio((studio) => drillScenes(studio, pictures));
  const practice = new PracticeRun(library, profile, drills, {
    engine: version,
    minutes,
    seed,
    plan,
    chances,
  });
  const { valueScale, screenReader, colour } = profile.settings.values;
  // The setting may be changed on the way.
  let isSpoken = screenReader;
  const startAt: StartAt = home
    ? { screen: 'home' }
    : {
        screen: 'practice',
        choice: {
          ...(wanted === undefined ? {} : { family: wanted }),
          ...(level === undefined ? {} : { level }),
        },
        ...(minutes === undefined ? {} : { minutes }),
      };
  const deps: TuiDeps = {
    version,
    drills,
    kindOf: (drill) => kindOf(practice.studio, drill as Drill) as unknown as ReturnType<TuiDeps['kindOf']>,
    familyName: (id) => findFamily(id)?.name ?? id,
    sceneOf: (drill, answer) => scenesIn(practice.studio)(drill as Drill, answer),
    get studio() {
      return practice.studio;
    },
    settings: { valueScale, palette: box.id, screenReader, colour },
    saveSettings: (patch) => {
      if (patch.palette !== undefined) practice.takeBox(patch.palette);
      isSpoken = patch.screenReader ?? isSpoken;
      return keep(profile, patch);
    },
    firstRun: profile.isFirstRun,
    changeBox: (id, change) => keepBox(profile, practice, id, () => changeBox(profile, library, id, change)),
    copyBox: (id, from) => keepBox(profile, practice, id, () => copyBox(profile, library, id, from)),
    nextSet: (choice) => practice.nextSet(choice),
    setNote: () => practice.leftOutNote(),
    placingIsOpen: () => practice.placingIsOpen,
    saveAnswer: (answered) => practice.save(answered),
    summarise: (answers) => practice.summarise(answers),
    glance: (columns) => practice.glance(columns),
    progressText: (columns) =>
      progressText(profile, {
        families: FAMILY_REFS,
        now: new Date(),
        columns,
        ascii: glyphsFor(process.env) === ASCII,
        plain: isSpoken,
      }),
    ...(profile.problem === undefined
      ? {
          mixtures: mixtureShelf(profile, library),
          readings: {
            keep: async (...read) => {
              const { readingShelf } = await import('./kept-readings.js');
              return readingShelf(profile, practice.box, library).keep(...read);
            },
          },
        }
      : {}),
    now: () => Date.now(),
    startAt,
    learner: profile.shownLearner,
    env: process.env,
    ...(profile.problem === undefined ? {} : { savingNote: profile.problem }),
    ...(options.color === false ? { noColourFlag: true } : {}),
  };
  const noBox = boxNotice(shelf, profile);
  for (const notice of [...profile.notices, ...(noBox === undefined ? [] : [noBox]), ...profile.cautions])
    process.stderr.write(`mudlark: ${notice}\n`);
  const { runTui } = await import('../tui/index.js');
  return runTui(deps);
}

async function readPlanFile(path: string): Promise<PracticePlan> {
  const [{ readText }, { parsePlan }, { MOST_TEXT }] = await Promise.all([
    import('../files/read.js'),
    import('../quiz/plan.js'),
    import('../drills/yaml-source.js'),
  ]);
  return parsePlan(readText(path, MOST_TEXT), path);
}
