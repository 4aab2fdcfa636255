/** Changing a learner's boxes: what is asked for, read from its options, and kept. */
import { DataError, UsageError } from '../errors.js';
import { BOX_PAINTS, libraryStudio, type Studio } from '../paints/index.js';
import {
  boxNameFault,
  MOST_BOXES,
  type OwnBox,
  paintNameFault,
  strengthFault,
  withBox,
} from '../profile/own-studio.js';
import type { Profile } from '../profile/profile.js';
import { keepSettings, resolveSettings } from '../profile/settings.js';
import { changeOwn } from '../profile/studio-file.js';
import { cleanText } from '../text/sanitize.js';
import type { BoxChange } from '../tui/practice/deps.js';
import { learnerStudio, readBox } from './learner.js';
import { filesOf } from './learner-files.js';
import { readNumber, readPaint } from './read-parts.js';

/** Options as typed. */
export interface BoxOptions extends BoxChange {
  /** These and no others: ids with commas between, each time. */
  readonly paints?: readonly string[];
}

type OwnPaint = OwnBox['paints'][number];

const readIds = (studio: Studio, texts: readonly string[] = []): string[] => [
  ...new Set(
    texts
      .flatMap((text) => text.split(','))
      .map((id) => id.trim())
      .filter((id) => id !== '')
      .map((id) => readPaint(studio, id).id),
  ),
];

/** "burnt-sienna=..." for a paint of the box. */
function readOf(studio: Studio, paints: readonly OwnPaint[], text: string, what: string): [string, string] {
  const at = text.indexOf('=');
  if (at <= 0) throw new UsageError(`"${cleanText(text, 60)}" must be written ${what}`);
  const { id } = readPaint(studio, text.slice(0, at));
  if (!paints.some(({ paint }) => paint === id))
    throw new UsageError(`${id} is not in the box; name it in --paints (box new) or --add (box edit)`);
  return [id, text.slice(at + 1)];
}

function requireFit(what: string, fault: string | undefined): void {
  if (fault !== undefined) throw new UsageError(`${what} ${fault}`);
}

function renamed(paint: OwnPaint, given: string): OwnPaint {
  const { name: _before, ...rest } = paint;
  if (given.trim() === '') return rest;
  const name = given.normalize('NFC').trim();
  requireFit(`the name of ${paint.paint}`, paintNameFault(name));
  return { ...rest, name };
}

function strengthened(paint: OwnPaint, given: string): OwnPaint {
  const { strength: _before, ...rest } = paint;
  const strength = Math.round(1000 * readNumber(given, `the strength of ${paint.paint}`)) / 1000;
  requireFit(`the strength of ${paint.paint}`, strengthFault(strength));
  return strength === 1 ? rest : { ...rest, strength };
}

/** Its paints are these; what is said of those that stay is kept. */
function holding({ name, paints }: OwnBox, ids: readonly string[]): OwnBox {
  const before = new Map(paints.map((each) => [each.paint, each]));
  return { name, paints: ids.map((paint) => before.get(paint) ?? { paint }) };
}

/** The box as the options change it. @throws UsageError for whatever it cannot be */
export function boxAsked(studio: Studio, box: OwnBox, options: BoxOptions): OwnBox {
  const named = readIds(studio, options.paints);
  const ids = new Set(named.length > 0 ? named : box.paints.map(({ paint }) => paint));
  for (const id of readIds(studio, options.add)) ids.add(id);
  for (const id of readIds(studio, options.remove)) {
    if (!ids.delete(id)) throw new UsageError(`${id} is not in the box`);
  }
  const { least, most } = BOX_PAINTS;
  if (ids.size < least || ids.size > most)
    throw new UsageError(`a box holds ${least} to ${most} paints, not ${ids.size}; name them with --paints`);
  let { paints } = holding(box, [...ids]);
  const change = (texts: readonly string[] = [], what: string, to: typeof renamed): void => {
    for (const text of texts) {
      const [id, given] = readOf(studio, paints, text, what);
      paints = paints.map((each) => (each.paint === id ? to(each, given) : each));
    }
  };
  change(options.nameOf, 'paint=name, like burnt-sienna="my sienna"', renamed);
  change(options.strength, 'paint=times, like burnt-sienna=1.4', strengthened);
  const names = paints.flatMap(({ name }) => name?.toLowerCase() ?? []);
  const twice = names.find((name, at) => names.indexOf(name) !== at);
  if (twice !== undefined) throw new UsageError(`two paints would be called "${twice}"; call them apart`);
  const library = libraryStudio();
  const taken = paints.find(({ paint, name }) =>
    library.paints.some((other) => other.id !== paint && other.name.toLowerCase() === name?.toLowerCase()),
  );
  if (taken !== undefined)
    throw new UsageError(`"${taken.name}" is the name of another paint than ${taken.paint}; call them apart`);
  return { name: box.name, paints };
}

/** A name for a box that is not there yet. @throws UsageError saying why it cannot be called so */
export function newBoxName(studio: Studio, text: string): string {
  const name = text.normalize('NFC').toLowerCase();
  requireFit(`the name of a box ("${cleanText(text, 40)}")`, boxNameFault(name));
  const taken = studio.palettes.find(({ id }) => id === name);
  if (taken !== undefined) {
    const mend = taken.isOwn === true ? `, or change that one with: mudlark box edit ${name}` : '';
    throw new UsageError(`there is a box called ${name} already; choose another name${mend}`);
  }
  return name;
}

/**
 * Keeps a box in the place of the one of its name, from what is on the disk.
 * @throws DataError for one box too many; StoreError when it cannot be kept
 */
export function keepOwnBox(profile: Profile, name: string, change: (there?: OwnBox) => OwnBox): OwnBox {
  let kept: OwnBox | undefined;
  profile.own = changeOwn(filesOf(profile), profile.learner, (own) => {
    const there = own.boxes.find((box) => box.name === name);
    if (there === undefined && own.boxes.length >= MOST_BOXES)
      throw new DataError(`there are ${MOST_BOXES} boxes already; delete one first, nothing was changed`);
    kept = change(there);
    return withBox(own, name, kept);
  });
  return kept as OwnBox;
}

/**
 * Changes a box of the learner's as it stands on the disk; what was read of its tubes follows a new name.
 * @throws UsageError for whatever it cannot be; otherwise as {@link keepOwnBox}
 */
export function changeBox(profile: Profile, library: Studio, name: string, options: BoxOptions): OwnBox {
  return keepOwnBox(profile, name, (there) => {
    if (there === undefined) throw new DataError(`the box ${name} is gone; nothing was changed`);
    const wanted = options.name?.normalize('NFC').toLowerCase() ?? name;
    const called = wanted === name ? name : newBoxName(learnerStudio(profile, library), wanted);
    return { ...boxAsked(library, there, options), name: called };
  });
}

/** A new box with the paints of another, and with what the learner says of them. @throws as {@link keepOwnBox} */
export function copyBox(profile: Profile, library: Studio, name: string, from: string): OwnBox {
  const paints =
    profile.own.boxes.find((box) => box.name === from)?.paints ??
    readBox(library, from).pigments.map((paint) => ({ paint }));
  return keepOwnBox(profile, name, () => ({ name, paints: [...paints] }));
}

/** Where the settings name the box that was called so, they name it by its new name. @throws StoreError */
export async function followName({ paths }: Profile, before: string, name: string): Promise<void> {
  if (before === name) return;
  // What is kept, whatever a flag or a variable says for now.
  const { values } = await resolveSettings(paths.config, {}, {});
  if (values.palette === before) await keepSettings(paths.config, { palette: name });
}
