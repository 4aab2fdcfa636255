/** The font of printed pages: copied beside the program by the build, else from the package that it comes in. */
import { existsSync, readFileSync } from 'node:fs';
import type { Face } from '../paper/types.js';

const FILES: Readonly<Record<Face, string>> = {
  regular: '400Regular/NotoSans_400Regular.ttf',
  bold: '700Bold/NotoSans_700Bold.ttf',
};

const COPIED = new URL('./fonts/', import.meta.url);
const SOURCES = new URL('../../node_modules/@expo-google-fonts/noto-sans/', import.meta.url);

function fontFile(face: Face): Uint8Array {
  const copied = new URL(`${face}.ttf`, COPIED);
  return readFileSync(existsSync(copied) ? copied : new URL(FILES[face], SOURCES));
}

/** Both faces, as they stand on the disk. */
export const paperFonts = (): Record<Face, Uint8Array> => ({
  regular: fontFile('regular'),
  bold: fontFile('bold'),
});
