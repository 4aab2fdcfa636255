/** `mudlark painting`: what a photograph shows of a painting's values and colours, studies of it, and from a mass to a mixture. */
import { basename, dirname, extname, join } from 'node:path';
import { colourInWords } from '../colour/words.js';
import { UsageError } from '../errors.js';
import { shownPath } from '../files/faults.js';
import { makeNamedFolder, requireOutputs, writeNamed } from '../files/named.js';
import { readPhotograph } from '../files/photograph.js';
import { loadSharp, pictureFile } from '../files/sharp.js';
import { type Advice, adviceOf } from '../painting/advice.js';
import { DEMO_SCENES, DEMO_STATES, demoSheet } from '../painting/demo.js';
import { doubtWords } from '../painting/doubts.js';
import { type PaintingReading, readPainting } from '../painting/index.js';
import { massMixture } from '../painting/mixture.js';
import { type Study, studyOf } from '../painting/study.js';
import type { Palette, Studio } from '../paints/index.js';
import type { Picture } from '../pictures/index.js';
import { cleanText } from '../text/sanitize.js';
import { wrapText } from '../text/wrap.js';
import { sayFinding } from '../words/tell.js';
import { type PageStyle, paintingPage } from './painting-page.js';
import { type MassWish, type PaintingOptions, readPaintingRequest } from './painting-request.js';
import { readPaints } from './read-paints.js';
import { colourLine, recipeFigures, recipeLines } from './recipe.js';
import { document, usage } from './run.js';
import type { WorkBar } from './work-bar.js';

/** From the outside. */
export interface PaintingPorts extends PageStyle {
  /** Where no paints are named. */
  readonly box: Palette;
  /** Whether patches are coloured (24-bit) as well as described. */
  readonly colour: boolean;
}

/** Most paints that are searched, as for recipes. */
const MOST_PAINTS = 24;

/** Where a study goes: beside the photograph, under its name. */
function studyPath(photograph: string, study: Study, out: string | undefined): string {
  if (out !== undefined) return out;
  const name = basename(photograph, extname(photograph));
  return join(dirname(photograph), `${name}-${study === 'grey' ? 'grey' : `values-${study}`}.png`);
}

async function writeStudies(
  reading: PaintingReading,
  studies: readonly (readonly [study: Study, path: string])[],
  force: boolean,
): Promise<string[]> {
  const done: string[] = [];
  for (const [study, path] of studies)
    done.push(writeNamed(path, await pictureFile(studyOf(reading.likeness, study), 'png'), force));
  return done;
}

interface Told {
  readonly reading: PaintingReading;
  readonly advice: readonly Advice[];
  readonly reasons: readonly string[];
  readonly mass?: MassWish | undefined;
  readonly paints: readonly string[];
  readonly boxWords: string;
}

/** The mass that is asked for. @throws UsageError where there are not so many */
function requireMass({ masses }: PaintingReading, { at }: MassWish) {
  const mass = masses[at];
  if (mass === undefined)
    throw new UsageError(
      `--mass takes 1 to ${masses.length} here, got ${at + 1}; see the list without --mass`,
    );
  return mass;
}

function mixtureText(studio: Studio, told: Told, wish: MassWish, ports: PaintingPorts): string {
  const { voice } = ports;
  const columns = Math.max(40, Math.min(ports.columns, 100));
  const mass = requireMass(told.reading, wish);
  const { match, on } = usage(() => massMixture(studio, mass.colour, wish.aim, told.paints));
  const head = `Mass ${wish.at + 1}: ${colourLine(mass.colour, ports)}.`;
  const near = `To mix it anew with ${told.boxWords}:`;
  const lines = [
    ...wrapText(head, columns),
    '',
    ...wrapText(near, columns),
    ...recipeLines(studio, match.wish, match.found, ports),
  ];
  if (on !== undefined)
    lines.push(
      '',
      ...wrapText(`From that wash, ${voice.spoken ? 'to' : 'for'} ${wish.aim}:`, columns),
      ...recipeLines(studio, on.wish, on.found, ports),
    );
  return `\n${lines.join('\n')}\n`;
}

function mixtureFigures(studio: Studio, told: Told, wish: MassWish, { voice }: PaintingPorts) {
  const mass = requireMass(told.reading, wish);
  const { match, on } = usage(() => massMixture(studio, mass.colour, wish.aim, told.paints));
  const figures = ({ wish: asked, found }: typeof match) =>
    found.recipes.map((recipe) => recipeFigures(studio, asked, found, recipe, voice));
  return {
    mass: wish.at,
    match: figures(match),
    ...(on === undefined ? {} : { goal: wish.aim, reach: on.found.reach, recipes: figures(on) }),
  };
}

function asJson(studio: Studio, told: Told, files: readonly string[], ports: PaintingPorts): string {
  const { reading, advice, reasons, mass } = told;
  const { white, range, shares, histogram, veil, trust } = reading;
  return document({
    white,
    range,
    shares,
    histogram,
    masses: reading.masses.map(({ x, y, share, colour: { step, chroma, hue, lab } }) => ({
      x,
      y,
      share,
      step,
      chroma,
      hue,
      lab,
      words: colourInWords(lab),
    })),
    veil: { slope: veil.slope ?? null, below: veil.below, masses: veil.masses },
    advice: advice.map(({ id, finding, family, recipe }) => ({
      id,
      text: sayFinding(finding, ports.voice),
      family,
      ...(recipe !== undefined && { recipe }),
    })),
    trust,
    reasons,
    ...(mass === undefined ? {} : { mixture: mixtureFigures(studio, told, mass, ports) }),
    ...(files.length === 0 ? {} : { files: files.map((file) => cleanText(file, 160)) }),
  });
}

/** Reads a photograph of a painting; text, or the JSON document. @throws UsageError, DataError, MudlarkError */
export async function paintingCommand(
  studio: Studio,
  path: string,
  options: PaintingOptions,
  ports: PaintingPorts,
): Promise<string> {
  const { force = false } = options;
  const request = readPaintingRequest(options);
  const { paints, box } = readPaints(
    studio,
    { flag: '--paints', texts: options.paints, boxName: options.box },
    ports.box,
    MOST_PAINTS,
  );
  const studies = request.studies.map((study) => [study, studyPath(path, study, options.out)] as const);
  const files = studies.map(([, file]) => file);
  requireOutputs(files, [path], force);
  const photograph = await readPhotograph(path);
  const reading = readPainting(studio, photograph, request.byHand);
  const told: Told = {
    reading,
    advice: adviceOf(studio, reading, { paints, box: ports.box }),
    reasons: [...photograph.notes, ...reading.doubts.map(doubtWords)],
    mass: request.mass,
    paints,
    boxWords: box,
  };
  // What cannot be told is known before anything is written.
  const json = options.json === true ? asJson(studio, told, files, ports) : undefined;
  const title = `${shownPath(basename(path))}: ${reading.masses.length} masses`;
  const text =
    json ??
    paintingPage(
      reading,
      {
        title,
        advice: told.advice.map(({ finding }) => sayFinding(finding, ports.voice)),
        reasons: told.reasons,
      },
      ports,
    ) + (request.mass === undefined ? '' : mixtureText(studio, told, request.mass, ports));
  const done = await writeStudies(reading, studies, force);
  if (json !== undefined || done.length === 0) return text;
  return `${text}\n${done.join('\n')}\n`;
}

/** Writes the demo pictures into a folder. @returns what was done @throws DataError where one is there already */
export async function paintingDemo(
  studio: Studio,
  pictures: readonly Picture[],
  folder: string,
  force: boolean,
  bar: WorkBar,
): Promise<string> {
  const sheets = DEMO_SCENES.flatMap(({ picture: id, name }) => {
    const picture = pictures.find((each) => each.id === id);
    return picture === undefined
      ? []
      : DEMO_STATES.map((state) => ({ picture, state, name: `${name}-${state}` }));
  });
  const formats = [
    ['jpeg', 'jpg'],
    ['png', 'png'],
  ] as const;
  const pathOf = (name: string, ending: string): string => join(folder, `${name}.${ending}`);
  requireOutputs(
    sheets.flatMap(({ name }) => formats.map(([, ending]) => pathOf(name, ending))),
    [],
    force,
  );
  // A folder is not made for pictures that cannot be written.
  await loadSharp();
  makeNamedFolder(folder);
  const done: string[] = [];
  try {
    for (const [at, { picture, state, name }] of sheets.entries()) {
      bar.progress(at, sheets.length);
      const sheet = demoSheet(studio, picture, state);
      for (const [format, ending] of formats)
        done.push(writeNamed(pathOf(name, ending), await pictureFile(sheet, format), force));
    }
  } finally {
    bar.end();
  }
  return `${done.join('\n')}\n`;
}
