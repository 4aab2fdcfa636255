/** Pages as a PDF. The only file that knows pdfkit: import it inside the command that needs it. */
import PDFDocument from 'pdfkit';
import type { Edge, Face, Fill, Mark, Outline, PaperDocument, Ruler } from './types.js';

/** The font files of both faces, as they stand on the disk (TrueType). */
export type Fonts = Readonly<Record<Face, Uint8Array>>;

/** Measures texts and draws documents with one pair of fonts. */
export interface Press {
  readonly ruler: Ruler;
  /** Characters of a text that the fonts do not have, each once: they are printed as boxes. */
  missing(text: string): string[];
  /** The document as a PDF, the same bytes for the same document. @param compress off only to look into it */
  print(document: PaperDocument, compress?: boolean): Promise<Uint8Array>;
}

type Doc = PDFKit.PDFDocument;

/** What pdfkit keeps of the font that is set. */
interface OpenFont {
  readonly _font: { readonly font: { hasGlyphForCodePoint(codePoint: number): boolean } };
}

function withFonts(doc: Doc, fonts: Fonts): Doc {
  for (const face of ['regular', 'bold'] as const) doc.registerFont(face, Buffer.from(fonts[face]));
  return doc;
}

function outlined(doc: Doc, outline: Outline): Doc {
  if ('box' in outline) return doc.rect(...outline.box);
  if ('ellipse' in outline) return doc.ellipse(...outline.ellipse);
  if ('polygon' in outline) return doc.polygon(...outline.polygon.map(([x, y]) => [x, y]));
  const [[x, y] = [0, 0], ...rest] = outline.path;
  return rest.reduce((path, [toX, toY]) => path.lineTo(toX, toY), doc.moveTo(x, y));
}

function paintOf(doc: Doc, fill: Fill): string | PDFKit.Mixins.ColorValue {
  if (typeof fill === 'string') return fill;
  const gradient = doc.linearGradient(...fill.from, ...fill.to);
  for (const [at, colour] of fill.colours.entries()) gradient.stop(at / (fill.colours.length - 1), colour);
  return gradient as unknown as PDFKit.Mixins.ColorValue;
}

function drawFigure(doc: Doc, outline: Outline, fill: Fill | undefined, edge: Edge | undefined): void {
  if (fill !== undefined) outlined(doc, outline).fill(paintOf(doc, fill) as string);
  if (edge !== undefined) outlined(doc.lineWidth(edge.width), outline).stroke(edge.colour);
}

function draw(doc: Doc, mark: Mark): void {
  if (mark.kind === 'text') {
    doc.font(mark.face).fontSize(mark.size).fillColor(mark.colour);
    doc.text(mark.text, mark.x, mark.y, { lineBreak: false, baseline: 'alphabetic' });
    return;
  }
  if (mark.kind === 'figure') {
    drawFigure(doc, mark.outline, mark.fill, mark.edge);
    return;
  }
  doc.save();
  outlined(doc, mark.outline).clip();
  for (const inner of mark.marks) draw(doc, inner);
  doc.restore();
}

function print(fonts: Fonts, document: PaperDocument, compress: boolean): Promise<Uint8Array> {
  const { title, size, pages, madeMs } = document;
  const made = new Date(madeMs);
  const doc = withFonts(
    new PDFDocument({
      autoFirstPage: false,
      compress,
      displayTitle: true,
      lang: 'en',
      margin: 0,
      pdfVersion: '1.7',
      // No standard font is loaded: its metrics lie in files of their own, which the bundle does not hold.
      font: null as unknown as string,
      info: { Title: title, Creator: 'Mudlark', CreationDate: made, ModDate: made },
    }),
    fonts,
  );
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = [];
    doc.on('data', (chunk: Buffer) => chunks.push(chunk));
    doc.on('end', () => resolve(Buffer.concat(chunks)));
    doc.on('error', reject);
    for (const page of pages) {
      doc.addPage({ size: [size.width, size.height], margin: 0 });
      for (const mark of page) draw(doc, mark);
    }
    doc.end();
  });
}

/** Opens the fonts. */
export function openPress(fonts: Fonts): Press {
  const measuring = withFonts(
    new PDFDocument({ autoFirstPage: false, font: null as unknown as string }),
    fonts,
  );
  const known = new Map<string, number>();
  return {
    ruler(text, { size, face = 'regular' }) {
      const key = `${face} ${size} ${text}`;
      let width = known.get(key);
      if (width === undefined) {
        width = measuring.font(face).fontSize(size).widthOfString(text);
        known.set(key, width);
      }
      return width;
    },
    missing(text) {
      const { font } = (measuring.font('regular') as unknown as OpenFont)._font;
      return [...new Set(text)].filter((sign) => !font.hasGlyphForCodePoint(sign.codePointAt(0) as number));
    },
    print: (document, compress = true) => print(fonts, document, compress),
  };
}
