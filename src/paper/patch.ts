/** A patch of colour with its words, and beside it the grey of its value: what colour tells is told without it too. */
import type { Spectrum } from '../optics/index.js';
import { type Look, lookOf, unreadWords } from '../words/look.js';
import { type Voice, valueWords } from '../words/voice.js';
import { type Block, beside, box, inset, over, paragraph, stack } from './block.js';
import { INK, type Ruler } from './types.js';

/** A colour to be shown. */
export interface Swatch {
  readonly label: string;
  readonly reflectance: Spectrum;
  /** What may not be said of it yet: `value`: more than its hue; `figures`: more than its words. No grey stands beside either. */
  readonly unread?: 'value' | 'figures';
}

/** Sign of a colour that a screen, and so this page, shows only nearly. */
export const NEAR_SIGN = '~';

/** What the sign means, once on a page. */
export const NEAR_NOTE = `${NEAR_SIGN} the printed colour is only near it. Printers differ: go by the words and figures.`;

const EDGE = { colour: INK.line, width: 0.5 } as const;
/** The grey's share of a patch. */
const TWIN_SHARE = 0.3;

/** The colour in a box, and the grey of the same value in its right part; or below, so that the greys of a row can be read along. */
export function patchBox(
  { reflectance, unread }: Pick<Swatch, 'reflectance' | 'unread'>,
  width: number,
  height: number,
  twin: 'right' | 'below' = 'right',
): Block {
  const look = lookOf(reflectance);
  const whole = box(width, height, { fill: look.hex, edge: EDGE });
  if (unread !== undefined) return whole;
  const [across, tall] = twin === 'right' ? [width * TWIN_SHARE, height] : [width, height * TWIN_SHARE];
  return over(
    whole,
    inset(box(across, tall, { fill: look.grey, edge: EDGE }), width - across, height - tall),
  );
}

const near = ({ inScreenGamut }: Look): string => (inScreenGamut ? '' : ` ${NEAR_SIGN}`);

/** What may be said of a swatch, a line each: "dark red", "step 6.3, middle dark", "chroma 41, strong". */
export function patchLines({ reflectance, unread }: Swatch, voice: Voice): string[] {
  const look = lookOf(reflectance);
  if (unread === 'value') return [`${unreadWords(look)}${near(look)}`];
  const words = `${look.words}${near(look)}`;
  if (unread === 'figures') return [words];
  return [
    words,
    `${valueWords(look.value, voice)}, ${look.valueWord}`,
    `chroma ${look.chroma.toFixed(0)}, ${look.chromaWord}`,
  ];
}

/** How patches are set. */
export interface PatchStyle {
  readonly ruler: Ruler;
  readonly voice: Voice;
  /** Of a patch, in points. */
  readonly height: number;
}

const WORDS = { size: 8 } as const;

function wordsOf(swatch: Swatch, width: number, { ruler, voice }: PatchStyle): Block {
  const lines = patchLines(swatch, voice).map((text) => paragraph(text, width, WORDS, ruler));
  return stack([paragraph(swatch.label, width, { ...WORDS, face: 'bold' }, ruler), ...lines]);
}

/** Its words under a patch. */
export function patchOverWords(swatch: Swatch, width: number, style: PatchStyle): Block {
  return stack([patchBox(swatch, width, style.height), wordsOf(swatch, width, style)], 3);
}

/** Its words to the right of a patch. */
function patchBesideWords(swatch: Swatch, width: number, patchWidth: number, style: PatchStyle): Block {
  const gap = 6;
  return beside([
    [0, patchBox(swatch, patchWidth, style.height)],
    [patchWidth + gap, wordsOf(swatch, width - patchWidth - gap, style)],
  ]);
}

/** Room between patches of a row, so that no edge of one touches the other. */
const PATCH_GAP = 12;

/**
 * Patches in rows, for comparing: words beside them where there are one or two, else below.
 * @param most patches in one row
 */
export function patchRows(swatches: readonly Swatch[], width: number, style: PatchStyle, most = 5): Block {
  if (swatches.length <= 2) {
    const each = (width - PATCH_GAP) / 2;
    return beside(
      swatches.map((swatch, at) => [
        at * (each + PATCH_GAP),
        patchBesideWords(swatch, each, Math.min(100, each * 0.45), style),
      ]),
    );
  }
  const rowsNeeded = Math.ceil(swatches.length / most);
  const columns = Math.ceil(swatches.length / rowsNeeded);
  const each = (width - PATCH_GAP * (Math.max(3, columns) - 1)) / Math.max(3, columns);
  const rows = Array.from({ length: rowsNeeded }, (_, row) =>
    beside(
      swatches
        .slice(row * columns, (row + 1) * columns)
        .map((swatch, at) => [at * (each + PATCH_GAP), patchOverWords(swatch, each, style)]),
    ),
  );
  return stack(rows, 8);
}
