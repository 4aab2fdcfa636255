/** `mudlark painting`: what a photograph shows of a painting's values and colours, or two of them before and after. */
import { basename } from 'node:path';
import { colourInWords } from '../colour/words.js';
import { shownPath } from '../files/faults.js';
import { requireOutputs } from '../files/named.js';
import { readPhotograph } from '../files/photograph.js';
import {
  type Advice,
  adviceOf,
  type Comparison,
  compared,
  comparisonTold,
  doubtsTold,
  type PaintingReading,
  paintingTold,
  readPainting,
  type Tray,
} from '../painting/index.js';
import type { Palette, Studio } from '../paints/index.js';
import { cleanText } from '../text/sanitize.js';
import { type Finding, sayAll, sayFinding } from '../words/tell.js';
import { massFigures, massText } from './painting-mass.js';
import { outputsOf, writeOutputs } from './painting-outputs.js';
import { type PageStyle, paintingPage } from './painting-page.js';
import { type PaintingOptions, type PaintingRequest, readPaintingRequest } from './painting-request.js';
import { readPaints } from './read-paints.js';
import { recipeFigures } from './recipe.js';
import { document, usage } from './run.js';

/** From the outside. */
export interface PaintingPorts extends PageStyle {
  /** Where no paints are named. */
  readonly box: Palette;
  /** Whether patches are coloured (24-bit) as well as described. */
  readonly colour: boolean;
  /** Whose painting it is. */
  readonly painter: string;
}

/** One photograph, read, and what it leads to. */
export interface ReadPainting {
  readonly name: string;
  readonly reading: PaintingReading;
  readonly advice: readonly Advice[];
  /** Sentences on the file. */
  readonly notes: readonly string[];
}

/** All that was asked for, read. */
export interface Paintings {
  readonly request: PaintingRequest;
  /** The painting, or before and after. */
  readonly read: readonly [ReadPainting, ReadPainting?];
  readonly comparison?: Comparison;
  readonly tray: Tray;
}

/** Most paints that are searched, as for recipes. */
const MOST_PAINTS = 24;

/** Paints that are named are those of the painting; the box has the newcomers. */
function trayOf(studio: Studio, options: PaintingOptions, box: Palette): Tray {
  const { paints } = readPaints(
    studio,
    { flag: '--paints', texts: options.paints, boxName: options.box },
    box,
    MOST_PAINTS,
  );
  const isNamed = (options.paints?.length ?? 0) > 0;
  const room = Math.max(0, MOST_PAINTS - paints.length);
  const others = isNamed ? box.pigments.filter((id) => !paints.includes(id)).slice(0, room) : [];
  return { paints, others };
}

/** Reads what was asked for. @throws UsageError, DataError, MudlarkError */
export async function readPaintings(
  studio: Studio,
  paths: readonly [string, string?],
  options: PaintingOptions,
  box: Palette,
): Promise<Paintings> {
  const request = readPaintingRequest(options, paths.length > 1);
  const tray = trayOf(studio, options, box);
  requireOutputs(
    outputsOf(paths[0], request, options).map(({ path }) => path),
    paths.flatMap((path) => path ?? []),
    options.force === true,
  );
  /** @param isLast whether next steps are told of it; of the painting before they stand in the document alone */
  const readOne = async (path: string, isLast: boolean): Promise<ReadPainting> => {
    const photograph = await readPhotograph(path);
    const reading = usage(() => readPainting(studio, photograph, request.byHand));
    return {
      name: cleanText(shownPath(basename(path)), 80),
      reading,
      advice: isLast || options.json === true ? adviceOf(studio, reading, tray) : [],
      notes: photograph.notes,
    };
  };
  const [path, later] = paths;
  const before = await readOne(path, later === undefined);
  if (later === undefined) return { request, read: [before], tray };
  const after = await readOne(later, true);
  return { request, read: [before, after], comparison: compared(before.reading, after.reading), tray };
}

/** What the two come to; nothing of one alone. */
function comparedFindings({ read: [before, after], comparison }: Paintings): Finding[] {
  return after === undefined || comparison === undefined
    ? []
    : comparisonTold(before.reading, after.reading, comparison);
}

/** All that is said, a paragraph each, '' a blank line: of two first what changed, then what is left to do. */
export function toldOf(studio: Studio, paintings: Paintings, voice: PageStyle['voice']): string[] {
  const { read } = paintings;
  const last = read[1] ?? read[0];
  const between = sayAll(comparedFindings(paintings), voice);
  return [
    ...between,
    ...(between.length === 0 ? [] : ['', `Now (${last.name}):`]),
    ...paintingTold(studio, last.reading, last.advice, voice),
    ...(last.notes.length === 0 ? [] : ['', ...last.notes]),
  ];
}

function figuresOf(studio: Studio, { reading, advice, notes }: ReadPainting, { voice }: PaintingPorts) {
  const { white, range, shares, histogram, veil, trust } = reading;
  return {
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
    advice: advice.map(({ id, finding, family, repair, recipe }) => {
      const { from, found } = recipe ?? {};
      const best = found?.recipes[0];
      return {
        id,
        text: sayFinding(finding, voice),
        family,
        ...(repair === undefined ? {} : { repair }),
        ...(from === undefined || found === undefined || best === undefined || repair === undefined
          ? {}
          : {
              from,
              recipe: recipeFigures(
                studio,
                { from, aim: repair.aim, darker: repair.darker },
                found,
                best,
                voice,
              ),
            }),
      };
    }),
    trust,
    reasons: [...notes, ...sayAll(doubtsTold(reading).slice(1), voice)],
  };
}

function asJson(
  studio: Studio,
  paintings: Paintings,
  files: readonly string[],
  ports: PaintingPorts,
): string {
  const { request, read, comparison, tray } = paintings;
  const [before, after] = read;
  const written = files.length === 0 ? {} : { files: files.map((file) => cleanText(file, 160)) };
  if (after === undefined || comparison === undefined)
    return document({
      ...figuresOf(studio, before, ports),
      ...(request.mass === undefined
        ? {}
        : { mixture: massFigures(studio, before.reading, request.mass, tray, ports) }),
      ...written,
    });
  const { aligned, verdict, moved, kept } = comparison;
  return document({
    aligned,
    verdict,
    kept: kept ?? null,
    moved: moved.map(({ mass, before: was, after: is, kept: share }) => ({
      mass,
      steps: [was.step, is.step],
      chroma: [was.chroma, is.chroma],
      kept: share ?? null,
    })),
    words: sayAll(comparedFindings(paintings), ports.voice).join(' '),
    before: figuresOf(studio, before, ports),
    after: figuresOf(studio, after, ports),
    ...written,
  });
}

/** Reads photographs of a painting; text, or the JSON document. @throws UsageError, DataError, MudlarkError */
export async function paintingCommand(
  studio: Studio,
  paths: readonly [string, string?],
  options: PaintingOptions,
  ports: PaintingPorts,
): Promise<string> {
  const paintings = await readPaintings(studio, paths, options, ports.box);
  const { request, read, tray } = paintings;
  const outputs = outputsOf(paths[0], request, options);
  const last = read[1] ?? read[0];
  const told = toldOf(studio, paintings, ports.voice);
  // What cannot be told is known before anything is written.
  const text =
    options.json === true
      ? asJson(
          studio,
          paintings,
          outputs.map(({ path }) => path),
          ports,
        )
      : request.mass === undefined
        ? paintingPage(
            last.reading,
            {
              title: `${last.name}: ${last.reading.masses.length} ${last.reading.masses.length === 1 ? 'mass' : 'masses'}`,
              told,
            },
            ports,
          )
        : massText(studio, last.reading, request.mass, tray, ports);
  const done = await writeOutputs(outputs, { read, told, ...ports }, options.force === true);
  return options.json === true || done.length === 0 ? text : `${text}\n${done.join('\n')}\n`;
}
