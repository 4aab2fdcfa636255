/** `mudlark quiz paper`: a handout and its key as PDF. */
import { UsageError } from '../errors.js';
import { paperFonts } from '../files/fonts.js';
import { requireOutputs, writeNamed } from '../files/named.js';
import { shippedPictures } from '../files/shipped.js';
import { libraryStudio } from '../paints/index.js';
import { openPress } from '../paper/pdf.js';
import { PAGE_SIZES, type PaperDocument } from '../paper/types.js';
import { drillScenes } from '../pictures/scene.js';
import { readHandout } from '../quiz/files/read-files.js';
import { createGrader } from '../quiz/marking.js';
import { handoutPaper, keyPaper, paperQuiz, readsValues } from '../quiz/paper/index.js';
import { cleanText } from '../text/sanitize.js';
import type { Voice } from '../words/voice.js';
import { missingLines, sizeOf, textsOf } from './printing.js';
import { document } from './run.js';

/** Options as typed. */
export interface PaperOptions {
  readonly out?: string;
  readonly key?: string;
  readonly size?: string;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** From the outside. */
export interface PaperPorts {
  readonly voice: Voice;
  readonly nowMs: number;
}

/** Values on the scale that is set here. */
export async function ownVoice(): Promise<Voice> {
  const { findPaths, resolveSettings } = await import('../profile/index.js');
  const { values } = await resolveSettings((await findPaths()).config, {});
  return { scale: values.valueScale, spoken: false };
}

/** Prints a handout and its key into files. @returns what was done @throws UsageError, DataError */
export async function paperCommand(path: string, options: PaperOptions, ports: PaperPorts): Promise<string> {
  const { out, key, force = false } = options;
  const outputs = [out, key].filter((file) => file !== undefined);
  if (outputs.length === 0 || outputs.includes(''))
    throw new UsageError(
      'quiz paper needs --out FILE.pdf for the handout, --key FILE.pdf for its key, or both',
    );
  const size = PAGE_SIZES[sizeOf(options.size ?? 'a4')];
  requireOutputs(outputs, [path], force);
  const studio = libraryStudio();
  const handout = readHandout(studio, path);
  const sceneOf = drillScenes(studio, await shippedPictures(studio));
  const press = openPress(paperFonts());
  const quiz = paperQuiz(handout, (drill) => sceneOf(drill), ports.voice);
  const style = { ruler: press.ruler, voice: ports.voice, size, madeMs: ports.nowMs };
  const written: { file: string; pages: number; done: string }[] = [];
  const missing = new Set<string>();
  const make = async (file: string | undefined, lay: () => PaperDocument): Promise<void> => {
    if (file === undefined) return;
    const laid = lay();
    for (const sign of press.missing(textsOf(laid))) missing.add(sign);
    const done = writeNamed(file, await press.print(laid), force);
    written.push({ file: cleanText(file, 160), pages: laid.pages.length, done });
  };
  await make(out, () => handoutPaper(quiz, style));
  await make(key, () => keyPaper(quiz, createGrader(handout), style));
  const signs = [...missing];
  const files = written.map(({ file, pages }) => ({ file, pages }));
  if (options.json === true)
    return document({ sheet: quiz.code, size: options.size ?? 'a4', files, missing: signs });
  const lines = [
    ...written.map(({ done, pages }) => `${done}, ${pages} page${pages === 1 ? '' : 's'}`),
    `Each page bears the sheet code ${quiz.code}. Type the answers in with: mudlark quiz enter`,
    ...(readsValues(handout)
      ? ['Some questions ask for the value of a colour by eye: print these in colour, a grey print tells it.']
      : []),
    ...missingLines(signs),
  ];
  return `${lines.join('\n')}\n`;
}
