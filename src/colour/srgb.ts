/** The tone curve of sRGB: what a file holds against light. Source: IEC 61966-2-1. */

/** Light, 0-1, of what a file holds, 0-1. */
export function lightOfCode(code: number): number {
  return code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4;
}

/** What a file holds, 0-1, of light 0-1: the inverse of {@link lightOfCode}. */
export function codeOfLight(light: number): number {
  return light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
}
