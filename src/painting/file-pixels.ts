/** Pixels as a picture file holds them: sRGB in 8 bits, row by row from the left upper corner. */
export interface FilePixels {
  readonly width: number;
  readonly height: number;
  /** One number a pixel for grey; else red, green, blue. */
  readonly data: Uint8Array;
}
