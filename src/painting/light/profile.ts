/**
 * Colour profiles of cameras and screens: tone curves and three primaries, which is all that most photographs carry. Read here rather
 * than by the decoder, which brings everything into sRGB in 8 bits and cuts off what sRGB does not hold. Source: ICC.1:2022.
 */

/** How the numbers of a file become light. */
export interface Profile {
  /** Light of a number, both 0-1: one curve for grey, three for red, green and blue. */
  readonly curves: readonly ((code: number) => number)[];
  /** From light of its own primaries to that of sRGB, row by row; none for grey. */
  readonly matrix?: readonly number[];
}

/** Linear sRGB of XYZ under D50, row by row. Source: B. Lindbloom, brucelindbloom.com, RGB/XYZ matrices (sRGB, D50). */
const FROM_D50 = [
  [3.1338561, -1.6168667, -0.4906146],
  [-0.9787684, 1.9161415, 0.033454],
  [0.0719453, -0.2289914, 1.4052427],
] as const;

/** Numbers that a parametric curve takes, by its kind (10.18). */
const PARAMETERS = [1, 3, 4, 5, 7] as const;
/** Most tags that are looked at, and most places of a curve. */
const MOST_TAGS = 100;
const MOST_PLACES = 65_536;

/** The bytes of a tag by its name; undefined where there is none, or it lies beyond the end. */
function tagsOf(icc: Uint8Array): (name: string) => DataView | undefined {
  const view = new DataView(icc.buffer, icc.byteOffset, icc.byteLength);
  const nameAt = (at: number): string => String.fromCharCode(...icc.subarray(at, at + 4));
  if (icc.length < 132 || nameAt(36) !== 'acsp') return () => undefined;
  const count = Math.min(MOST_TAGS, view.getUint32(128), Math.floor((icc.length - 132) / 12));
  const found = new Map<string, DataView>();
  for (let tag = 0; tag < count; tag++) {
    const at = 132 + 12 * tag;
    const [offset, size] = [view.getUint32(at + 4), view.getUint32(at + 8)];
    if (offset + size <= icc.length)
      found.set(nameAt(at), new DataView(icc.buffer, icc.byteOffset + offset, size));
  }
  return (name) => found.get(name);
}

const kindOf = (tag: DataView): string =>
  tag.byteLength < 12
    ? ''
    : String.fromCharCode(tag.getUint8(0), tag.getUint8(1), tag.getUint8(2), tag.getUint8(3));

const fixedAt = (tag: DataView, at: number): number => tag.getInt32(at) / 65_536;

/** A curve of places that are joined by lines (10.6). */
function sampledCurve(tag: DataView): ((code: number) => number) | undefined {
  const count = tag.getUint32(8);
  if (count === 0) return (code) => code;
  if (count > MOST_PLACES || tag.byteLength < 12 + 2 * count) return undefined;
  if (count === 1) {
    const power = tag.getUint16(12) / 256;
    return (code) => code ** power;
  }
  const places = Float64Array.from({ length: count }, (_, at) => tag.getUint16(12 + 2 * at) / 65_535);
  return (code) => {
    const at = code * (count - 1);
    const low = Math.min(count - 2, Math.floor(at));
    const [from, to] = [places[low] as number, places[low + 1] as number];
    return from + (to - from) * (at - low);
  };
}

/** A power with a straight or flat beginning (10.18). */
function parametricCurve(tag: DataView): ((code: number) => number) | undefined {
  const kind = tag.getUint16(8);
  const count = PARAMETERS[kind];
  if (count === undefined || tag.byteLength < 12 + 4 * count) return undefined;
  const [g = 1, a = 1, b = 0, c = 0, d = 0, e = 0, f = 0] = Array.from({ length: count }, (_, at) =>
    fixedAt(tag, 12 + 4 * at),
  );
  const power = (code: number): number => Math.max(0, a * code + b) ** g;
  if (kind === 0) return (code) => code ** g;
  if (kind === 1) return (code) => (a * code + b >= 0 ? power(code) : 0);
  if (kind === 2) return (code) => (a * code + b >= 0 ? power(code) : 0) + c;
  return (code) => (code >= d ? power(code) + e : c * code + f);
}

function curveOf(tag: DataView | undefined): ((code: number) => number) | undefined {
  if (tag === undefined) return undefined;
  const kind = kindOf(tag);
  const curve = kind === 'curv' ? sampledCurve(tag) : kind === 'para' ? parametricCurve(tag) : undefined;
  // Whatever its numbers say, white is white and nothing is less than no light.
  const top = curve?.(1) ?? 0;
  return curve === undefined || !(top > 0.5 && top < 2)
    ? undefined
    : (code) => Math.min(1, Math.max(0, curve(code) / top));
}

function primaryOf(tag: DataView | undefined): readonly number[] | undefined {
  if (tag === undefined || kindOf(tag) !== 'XYZ ' || tag.byteLength < 20) return undefined;
  return [8, 12, 16].map((at) => fixedAt(tag, at));
}

/** From light of the primaries to that of sRGB, white to white; undefined where they make no white. */
function matrixOf(primaries: readonly (readonly number[])[]): readonly number[] | undefined {
  const rows = FROM_D50.map((row) =>
    primaries.map((xyz) => row.reduce((sum, part, at) => sum + part * (xyz[at] as number), 0)),
  );
  const whites = rows.map((row) => row.reduce((sum, part) => sum + part, 0));
  if (!whites.every((white) => white > 0.5 && white < 2)) return undefined;
  return rows.flatMap((row, at) => row.map((part) => part / (whites[at] as number)));
}

/**
 * Reads a profile.
 * @param channels colours of the file that it comes with: 1 grey, 3 red, green and blue
 * @returns undefined where it is none of this kind, goes by tables, or is damaged
 */
export function readProfile(icc: Uint8Array, channels: 1 | 3): Profile | undefined {
  const tag = tagsOf(icc);
  if (tag('A2B0') !== undefined || tag('D2B0') !== undefined) return undefined;
  const names = channels === 1 ? ['k'] : ['r', 'g', 'b'];
  const curves = names.flatMap((name) => curveOf(tag(`${name}TRC`)) ?? []);
  if (curves.length < names.length) return undefined;
  if (channels === 1) return { curves };
  const primaries = names.flatMap((name) => {
    const primary = primaryOf(tag(`${name}XYZ`));
    return primary === undefined ? [] : [primary];
  });
  const matrix = primaries.length === 3 ? matrixOf(primaries) : undefined;
  return matrix && { curves, matrix };
}
