/** Reads an uncompressed PDF back: sizes, texts through their ToUnicode maps, filled boxes with their colours. Follows ISO 32000-1. */

/** A text as it stands on a page; places in points from the left upper corner. */
interface ReadText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
}

interface ReadBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** '#rrggbb'; absent: only drawn around. */
  readonly fill?: string;
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly ReadText[];
  readonly boxes: readonly ReadBox[];
}

export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  /** Base names of the embedded fonts. */
  readonly fonts: readonly string[];
  readonly source: string;
}

type Objects = ReadonlyMap<string, string>;

/** 7.3.10 indirect objects, by number. */
function objectsOf(source: string): Objects {
  return new Map(
    [...source.matchAll(/^(\d+) 0 obj\n([\s\S]*?)\nendobj/gm)].map(([, id, body]) => [
      id as string,
      body as string,
    ]),
  );
}

const refIn = (body: string, key: string): string => new RegExp(`/${key} (\\d+) 0 R`).exec(body)?.[1] ?? '';
const streamOf = (body: string): string => /stream\n([\s\S]*)\nendstream/.exec(body)?.[1] ?? '';

/** 9.10.3 ToUnicode: glyph to text. */
function unicodeMap(cmap: string): Map<number, string> {
  const map = new Map<number, string>();
  for (const [, from, list] of cmap.matchAll(/<([0-9a-f]{4})> <[0-9a-f]{4}> \[(.*?)\]/g)) {
    let glyph = Number.parseInt(from as string, 16);
    for (const [, codes] of (list as string).matchAll(/<([0-9a-f ]*)>/g)) {
      const units = (codes as string).replaceAll(' ', '').match(/.{4}/g) ?? [];
      map.set(glyph, String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16))));
      glyph += 1;
    }
  }
  return map;
}

const hexOf = (channels: readonly number[]): string =>
  `#${channels
    .map((channel) =>
      Math.round(channel * 255)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;

/** The operators that the program's pages use: 8.4, 8.5, 8.6.8, 9.4. */
function readContent(
  content: string,
  height: number,
  fonts: ReadonlyMap<string, ReadonlyMap<number, string>>,
): Pick<ReadPage, 'texts' | 'boxes'> {
  const texts: ReadText[] = [];
  const boxes: ReadBox[] = [];
  let fill = '#000000';
  let font = '';
  let size = 0;
  let at = { x: 0, y: 0 };
  let pending: ReadBox | undefined;
  for (const line of content.split('\n')) {
    const parts = line.split(' ');
    const numbers = parts.map(Number);
    const operator = parts.at(-1);
    if (operator === 'scn' && parts.length === 4) fill = hexOf(numbers.slice(0, 3));
    else if (operator === 'scn') fill = '';
    else if (operator === 'Tf') [font, size] = [parts[0] ?? '', Number(parts[1])];
    else if (operator === 'Tm') at = { x: numbers[4] as number, y: height - (numbers[5] as number) };
    else if (operator === 'TJ') {
      const glyphs = [...line.matchAll(/<([0-9a-f]*)>/g)].flatMap(
        ([, hex]) => (hex as string).match(/.{4}/g) ?? [],
      );
      const map = fonts.get(font.slice(1));
      texts.push({
        text: glyphs.map((glyph) => map?.get(Number.parseInt(glyph, 16)) ?? '\ufffd').join(''),
        ...at,
        size,
      });
    } else if (operator === 're') {
      const [x, y, width, tall] = numbers as [number, number, number, number];
      pending = { x, y, width, height: tall };
    } else if (operator === 'f' && pending !== undefined) {
      boxes.push({ ...pending, fill });
      pending = undefined;
    } else if (operator === 'S' && pending !== undefined) {
      boxes.push(pending);
      pending = undefined;
    } else if (operator === 'n' || operator === 'f' || operator === 'S') pending = undefined;
  }
  return { texts, boxes };
}

/** @param bytes of a PDF that the program wrote without compression */
export function readPdf(bytes: Uint8Array): ReadPdf {
  const source = Buffer.from(bytes).toString('latin1');
  const objects = objectsOf(source);
  const bodies = [...objects.values()];
  const kids =
    /\/Kids \[([^\]]*)\]/.exec(bodies.find((body) => body.includes('/Type /Pages')) ?? '')?.[1] ?? '';
  const pages = [...kids.matchAll(/(\d+) 0 R/g)].map(([, id]): ReadPage => {
    const page = objects.get(id as string) ?? '';
    const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(page) ?? [];
    const resources = objects.get(refIn(page, 'Resources')) ?? '';
    const fonts = new Map(
      [...resources.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name, ref]) => {
        const toUnicode = refIn(objects.get(ref as string) ?? '', 'ToUnicode');
        return [name as string, unicodeMap(streamOf(objects.get(toUnicode) ?? ''))];
      }),
    );
    const content = streamOf(objects.get(refIn(page, 'Contents')) ?? '');
    return { width: Number(width), height: Number(height), ...readContent(content, Number(height), fonts) };
  });
  const fonts = bodies.flatMap((body) => /\/FontName \/(\S+)[\s\S]*\/FontFile2/.exec(body)?.[1] ?? []);
  return { pages, fonts, source };
}

/** All words of a page or a document, a blank between its lines, so that broken paragraphs read as one. */
export const wordsOf = (pages: readonly ReadPage[]): string =>
  pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
