/** `mudlark dried` in a terminal: what to paint, then what dried of it, one plain line at a time. */
import { scaleEnds, VALUE_SCALES } from '../colour/value.js';
import { InputError, UsageError } from '../errors.js';
import type { Dried, ReadBy } from '../readings/index.js';
import { cleanText } from '../text/sanitize.js';
import { dialogue } from './dialogue.js';
import {
  asked,
  comparedLines,
  type DriedStyle,
  driedCorrect,
  mixtureLines,
  tellingLines,
  wrapped,
} from './dried.js';
import { readDried } from './dried-read.js';
import { type DriedPlace, keepReadings, newStrengths, requireOwn, toldOf } from './dried-store.js';

type Ask = (prompt: string) => Promise<string>;

const say = (lines: readonly string[]): void => {
  process.stdout.write(`${lines.join('\n')}\n`);
};

/** Asks until it can be read; undefined for an empty line. */
async function askDried(ask: Ask, prompt: string, style: DriedStyle): Promise<Dried | undefined> {
  for (;;) {
    const typed = cleanText(await ask(prompt), 200);
    if (typed === '') return undefined;
    try {
      return readDried(typed, style.voice.scale);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      say(wrapped([error.message], style, '   '));
    }
  }
}

/**
 * Says what to paint and asks what dried; each reading is kept at once. Strengths that are known well enough are used on a yes.
 * @throws UsageError without a terminal or for a box of the program's; MudlarkError with exit code 130 when it is left
 */
export async function driedByHand(
  place: DriedPlace,
  by: ReadBy,
  style: DriedStyle,
  now: () => Date,
): Promise<string> {
  requireOwn(place);
  if (process.stdin.isTTY !== true || process.stdout.isTTY !== true)
    throw new UsageError(
      'mudlark dried asks in a terminal; elsewhere: mudlark dried ask, mudlark dried add --from -',
    );
  const { mixtures } = asked(place, by);
  if (mixtures.length === 0)
    throw new UsageError(
      `no mixture of the ${place.box.name} tells how strong its tubes are${by === 'value' ? '; try with --lab' : ''}`,
    );
  const read =
    by === 'value'
      ? `read the step on a grey scale (${scaleEnds(VALUE_SCALES[style.voice.scale])})`
      : 'read CIELAB, like lab(40 10 20), or a Munsell notation, like 7.5YR 4/4';
  say(
    wrapped(
      [
        `Paint these from your ${place.box.name}, let them dry, and ${read}. They are asked for again until you have read them. A reading is kept when its mixture was read; what you have not painted yet, pass with Enter.`,
      ],
      style,
    ),
  );
  for (const [at, { wash }] of mixtures.entries()) say(mixtureLines(place, wash, at, style));
  say(['']);
  let count = 0;
  await dialogue(async (ask) => {
    for (const [at, { wash }] of mixtures.entries()) {
      const alone = await askDried(ask, `${at + 1}. The wash alone: `, style);
      const prompt = `${at + 1}. With what was stirred in: `;
      let mixed = await askDried(ask, prompt, style);
      if (mixed === undefined && alone !== undefined) {
        say(
          wrapped(
            [
              'The wash alone does not tell how strong tubes are against each other: type what it dried to with what was stirred in. Enter again drops this reading.',
            ],
            style,
            '   ',
          ),
        );
        mixed = await askDried(ask, prompt, style);
        if (mixed === undefined) say(['   not kept: the mixture was not read']);
      }
      if (mixed === undefined) continue;
      const reading = { wash, ...(alone === undefined ? {} : { alone }), mixed };
      keepReadings(place, [reading], now());
      count += 1;
      say([...comparedLines(place, reading, style, '   '), '   kept']);
    }
  }, 'left; what was kept before stays');
  if (count === 0) return 'Nothing was read.\n';
  if (newStrengths(place, toldOf(place)).size === 0)
    return `${['', ...tellingLines(place, style)].join('\n')}\nWhat to paint next: mudlark dried\n`;
  return driedCorrect(place, style, async (question) => {
    const lines = wrapped([`${question} (yes/no)`], style);
    if (lines.length > 1) say(lines.slice(0, -1));
    const answer = await dialogue(
      (ask) => ask(`${lines.at(-1)} `),
      'left; the readings are kept, the box is as it was',
    );
    return /^\s*y(es)?\s*$/i.test(answer);
  });
}
