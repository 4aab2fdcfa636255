/** Building HTML in which no text of a file can become markup. */
import { cleanText } from './sanitize.js';

/** Markup that may be put into a page as it is. Only this file makes it. */
export interface Markup {
  readonly markup: string;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
  '`': '&#96;',
};

/** Text made safe for an element or a quoted attribute: nothing invisible, nothing that is markup. */
export function escapeHtml(text: string): string {
  return cleanText(text).replace(/[&<>"'`]/g, (character) => ENTITIES[character] as string);
}

type Part = string | number | Markup;

const toMarkup = (part: Part): string => (typeof part === 'object' ? part.markup : escapeHtml(String(part)));

/** A template: what is put in is escaped unless it is markup already. */
export function html(fixed: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return {
    markup: fixed.reduce((page, text, index) => page + toMarkup(parts[index - 1] as Part) + text),
  };
}

/** A PNG as a data address: letters of base64 alone, and whole, where text is cut. */
export const pngAddress = (png: Uint8Array): Markup => ({
  markup: `data:image/png;base64,${Buffer.from(png).toString('base64')}`,
});

/** Pieces one after another. */
export function join(pieces: readonly Markup[]): Markup {
  return { markup: pieces.map(({ markup }) => markup).join('\n') };
}
