/** `mudlark box`: a learner's own boxes of paints, put together, looked at, taken and carried along. */
import { DataError, UsageError } from '../errors.js';
import { shownPath } from '../files/faults.js';
import { writeNamed } from '../files/named.js';
import { readText } from '../files/read.js';
import { type Palette, paintOf, revisionOf, type Studio } from '../paints/index.js';
import {
  boxText,
  changeOwn,
  keepSettings,
  MOST_OWN_BYTES,
  type OwnBox,
  type Profile,
  parseBox,
  USUAL_PALETTE,
  withoutBox,
} from '../profile/index.js';
import { didYouMean } from '../text/nearest.js';
import { cleanText } from '../text/sanitize.js';
import { padText } from '../text/wrap.js';
import { type BoxOptions, boxAsked, changeBox, followName, keepOwnBox, newBoxName } from './box-change.js';
import { type BoxDrills, leftOutWords } from './box-drills.js';
import { boxInUse, learnerStudio, readBox } from './learner.js';
import { filesOf, requireNoRecord } from './learner-files.js';
import { readPaint } from './read-parts.js';
import type { Confirm } from './record.js';
import { document, usage } from './run.js';
import { overriddenWords } from './settings.js';

/** Whose boxes, among which paints. */
export interface BoxPlace {
  readonly profile: Profile;
  /** The library's studio. */
  readonly library: Studio;
  /** The written drills that hold with a box; takes seconds where strengths were corrected and it was not asked before. */
  drillsOf(box: Palette): BoxDrills;
}

const shelfOf = ({ profile, library }: BoxPlace): Studio => learnerStudio(profile, library);

const counted = (n: number): string => `${n} paint${n === 1 ? '' : 's'}`;

/** The learner's box of that name. @throws UsageError with the nearest names */
function ownBox({ profile: { own } }: BoxPlace, name: string): OwnBox {
  const wanted = name.normalize('NFC').toLowerCase();
  const found = own.boxes.find((box) => box.name === wanted);
  if (found !== undefined) return found;
  const names = own.boxes.map((box) => box.name);
  const there = names.length === 0 ? 'there is none yet' : `there are: ${names.join(', ')}`;
  throw new UsageError(
    `no box of your own is called "${cleanText(name, 40)}"; ${there}.${didYouMean(wanted, names)}`,
  );
}

/** What was kept, and which drills it leaves out. */
function keptWords(
  place: BoxPlace,
  { name }: OwnBox,
  isUsed = boxInUse(shelfOf(place), place.profile).id === name,
): string {
  const box = readBox(shelfOf(place), name);
  const leftOut = leftOutWords(box, place.drillsOf(box));
  const use = isUsed ? 'It is in use.' : `Use it with: mudlark box use ${name}`;
  return `${[`The ${box.name} is kept: ${counted(box.pigments.length)}. ${use}`, ...(leftOut === undefined ? [] : [leftOut])].join('\n')}\n`;
}

/** Puts a box together. @throws UsageError for whatever it cannot be; StoreError when it cannot be kept */
export function boxNew(place: BoxPlace, text: string, options: BoxOptions): string {
  const name = newBoxName(shelfOf(place), text);
  const box = boxAsked(place.library, { name, paints: [] }, options);
  return keptWords(
    place,
    keepOwnBox(place.profile, name, () => box),
  );
}

/** Changes a box, or calls it otherwise. @throws as {@link boxNew} */
export async function boxEdit(place: BoxPlace, text: string, options: BoxOptions): Promise<string> {
  const { name } = ownBox(place, text);
  if (Object.values(options).every((given) => given === undefined || given.length === 0))
    throw new UsageError(
      'say what is to be changed: --paints, --add, --remove, --name-of, --strength or --name',
    );
  const isUsed = boxInUse(shelfOf(place), place.profile).id === name;
  const box = changeBox(place.profile, place.library, name, options);
  await followName(place.profile, name, box.name);
  return keptWords(place, box, isUsed);
}

interface JsonOption {
  readonly json?: boolean;
}

/** All boxes, the one in use marked. */
export function boxList(place: BoxPlace, { json }: JsonOption): string {
  const shelf = shelfOf(place);
  const used = boxInUse(shelf, place.profile).id;
  if (json === true)
    return document({
      boxes: shelf.palettes.map((box) => ({
        id: box.id,
        name: box.name,
        own: box.isOwn === true,
        inUse: box.id === used,
        paints: box.pigments,
        revision: revisionOf(box),
      })),
    });
  const columns = Math.max(...shelf.palettes.map(({ id }) => id.length)) + 2;
  const rows = shelf.palettes.map(({ id, pigments, isOwn }) =>
    `${padText(id, columns)}${padText(counted(pigments.length), 11)}${padText(isOwn === true ? 'your own' : '', 10)}${id === used ? 'in use' : ''}`.trimEnd(),
  );
  return `${rows.join('\n')}\n`;
}

/** One box: its paints, what they are called, how strong they are, and which drills it leaves out. */
export function boxShow(place: BoxPlace, name: string | undefined, { json }: JsonOption): string {
  const { library, drillsOf, profile } = place;
  const shelf = shelfOf(place);
  const box =
    name === undefined ? boxInUse(shelf, profile) : readBox(shelf, name.normalize('NFC').toLowerCase());
  const { names = {}, strengths = {} } = box;
  const held = drillsOf(box);
  const inUse = boxInUse(shelf, profile).id === box.id;
  const unknown = profile.own.boxes
    .filter((each) => each.name === box.id)
    .flatMap(({ paints }) => paints.map(({ paint }) => paint))
    .filter((id) => !box.pigments.includes(id));
  if (json === true)
    return document({
      id: box.id,
      name: box.name,
      own: box.isOwn === true,
      inUse,
      revision: revisionOf(box),
      paints: box.pigments.map((id) => ({
        id,
        name: names[id] ?? paintOf(library, id).name,
        strength: strengths[id] ?? 1,
      })),
      unknown,
      drills: { held: held.drills.length, notOwned: held.notOwned, unsound: held.unsound },
    });
  const ids = Math.max(...box.pigments.map((id) => id.length)) + 2;
  const rows = box.pigments.map((id) => {
    const { [id]: own } = names;
    const { [id]: factor } = strengths;
    const shown = own === undefined ? paintOf(library, id).name : `"${own}"`;
    return `  ${padText(id, ids)}${padText(shown, 33)}${factor === undefined ? '' : `${factor} times as strong`}`.trimEnd();
  });
  const lines = [
    `${box.name}: ${counted(box.pigments.length)}${inUse ? ', in use' : ''}, revision ${revisionOf(box)}`,
    ...rows,
    ...(unknown.length === 0 ? [] : [`This version has no ${unknown.join(', ')}; kept, but not used.`]),
    leftOutWords(box, held) ?? 'All written drills hold with it.',
  ];
  return `${lines.join('\n')}\n`;
}

/** Takes a box. @throws UsageError for a name that none bears; StoreError when it cannot be kept */
export async function boxUse(place: BoxPlace, name: string): Promise<string> {
  const shelf = shelfOf(place);
  const box = readBox(shelf, name.normalize('NFC').toLowerCase());
  await keepSettings(place.profile.paths.config, { palette: box.id });
  const said = `The box in use is ${box.id}.${overriddenWords(place.profile, 'palette')}\n`;
  const leftOut = box.isOwn === true ? leftOutWords(box, place.drillsOf(box)) : undefined;
  return leftOut === undefined ? said : `${said}${leftOut}\n`;
}

/** A box as text of a file. @throws UsageError for a name that none bears */
export const boxExportText = (place: BoxPlace, name: string): string => boxText(ownBox(place, name));

/** Writes a box to a file. @throws DataError when it is there and not to be replaced, or cannot be written */
export function boxExport(place: BoxPlace, name: string, path: string, force: boolean): string {
  const text = boxExportText(place, name);
  requireNoRecord(place.profile, path);
  return `${writeNamed(path, text, force)}\n`;
}

export interface ImportOptions {
  /** Another name for it. */
  readonly as?: string;
  /** Put it in the place of the one of its name. */
  readonly force?: boolean;
}

/**
 * Brings a box in.
 * @param input what came in at standard input, where that is read in the place of the file
 * @throws DataError when the file cannot be used, or a box of the name is there and not to be replaced
 */
export function boxImport(
  place: BoxPlace,
  path: string,
  { as, force }: ImportOptions,
  input?: string,
): string {
  const { profile, library } = place;
  const shown = input === undefined ? shownPath(path) : 'standard input';
  const read = parseBox(input ?? readText(path, MOST_OWN_BYTES), shown);
  for (const { paint } of read.paints) {
    try {
      readPaint(library, paint);
    } catch (error) {
      if (!(error instanceof UsageError)) throw error;
      throw new DataError(`${shown}: ${error.message}`, { cause: error });
    }
  }
  const wanted = as ?? read.name;
  const there = profile.own.boxes.find(({ name }) => name === wanted.normalize('NFC').toLowerCase());
  const box: OwnBox = { ...read, name: there?.name ?? usage(() => newBoxName(shelfOf(place), wanted)) };
  if (there !== undefined && JSON.stringify(there.paints) === JSON.stringify(box.paints))
    return `The box ${box.name} is there already.\n`;
  if (there !== undefined && force !== true)
    throw new DataError(
      `a box called ${box.name} is there already; add --as NAME to call this one otherwise, or --force to replace it`,
    );
  return keptWords(
    place,
    keepOwnBox(profile, box.name, () => box),
  );
}

/** Deletes a box after asking. @throws UsageError for a name that none bears; StoreError when it cannot be done */
export async function boxDelete(place: BoxPlace, text: string, confirm: Confirm): Promise<string> {
  const { profile } = place;
  const { name, paints } = ownBox(place, text);
  const sure = await confirm(`Delete the box ${name} with ${counted(paints.length)}?`);
  if (!sure) return 'Nothing was changed.\n';
  profile.own = changeOwn(filesOf(profile), profile.learner, (own) => withoutBox(own, name));
  if (profile.settings.values.palette !== name) return `The box ${name} is deleted.\n`;
  await keepSettings(profile.paths.config, { palette: USUAL_PALETTE });
  return `The box ${name} is deleted; the box in use is ${USUAL_PALETTE} now.\n`;
}
