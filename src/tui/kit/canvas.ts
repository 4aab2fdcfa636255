/** A small picture made of characters: dots in braille cells (2 by 4 to a character) or, in ASCII, one a character. */

/** A run of characters of one look. */
export interface Run<R extends string = string> {
  readonly text: string;
  readonly role: R;
}

/** Bits of a braille cell by column and row, Unicode block 2800. */
const BRAILLE_BITS = [
  [0x01, 0x02, 0x04, 0x40],
  [0x08, 0x10, 0x20, 0x80],
] as const;

export class Canvas<R extends string> {
  readonly columns: number;
  readonly rows: number;
  private readonly braille: boolean;
  private readonly blank: R;
  private readonly bits: Uint8Array;
  private readonly signs: (string | undefined)[];
  private readonly roles: R[];

  constructor(columns: number, rows: number, options: { braille: boolean; role: R }) {
    this.columns = Math.max(1, columns);
    this.rows = Math.max(1, rows);
    this.braille = options.braille;
    this.blank = options.role;
    const cells = this.columns * this.rows;
    this.bits = new Uint8Array(cells);
    this.signs = Array.from({ length: cells }, () => undefined);
    this.roles = Array.from({ length: cells }, () => this.blank);
  }

  /** Dots across and down. */
  get width(): number {
    return this.braille ? this.columns * 2 : this.columns;
  }
  get height(): number {
    return this.braille ? this.rows * 4 : this.rows;
  }

  /** Sets the dot at a place from 0 (left, top) to 1 (right, bottom); outside it draws nothing. */
  dot(x: number, y: number, role: R, sign = '.'): void {
    if (!(x >= 0 && x <= 1 && y >= 0 && y <= 1)) return;
    const px = Math.min(this.width - 1, Math.floor(x * this.width));
    const py = Math.min(this.height - 1, Math.floor(y * this.height));
    const [column, row] = this.braille ? [px >> 1, py >> 2] : [px, py];
    const cell = row * this.columns + column;
    if (this.signs[cell] !== undefined) return;
    this.roles[cell] = role;
    if (this.braille) this.bits[cell] = (this.bits[cell] ?? 0) | (BRAILLE_BITS[px & 1]?.[py & 3] ?? 0);
    else this.signs[cell] = sign;
  }

  /** A straight line between two places. */
  line(x0: number, y0: number, x1: number, y1: number, role: R, sign = '.'): void {
    const steps = Math.max(
      1,
      Math.ceil(Math.max(Math.abs(x1 - x0) * this.width, Math.abs(y1 - y0) * this.height) * 2),
    );
    for (let i = 0; i <= steps; i++) {
      const t = i / steps;
      this.dot(x0 + (x1 - x0) * t, y0 + (y1 - y0) * t, role, sign);
    }
  }

  /** Column and row of a place. */
  cellAt(x: number, y: number): [number, number] {
    const inside = (at: number, count: number): number =>
      Math.min(count - 1, Math.max(0, Math.floor(at * count)));
    return [inside(x, this.columns), inside(y, this.rows)];
  }

  /** Writes text from a cell on, over whatever is there. */
  write(column: number, row: number, text: string, role: R): void {
    if (row < 0 || row >= this.rows) return;
    for (const [offset, sign] of [...text].entries()) {
      if (column + offset < 0 || column + offset >= this.columns) continue;
      const cell = row * this.columns + column + offset;
      this.signs[cell] = sign;
      this.roles[cell] = role;
    }
  }

  /** The picture, one list of runs a row. */
  lines(): Run<R>[][] {
    return Array.from({ length: this.rows }, (_, row) => {
      const runs: { text: string; role: R }[] = [];
      for (let column = 0; column < this.columns; column++) {
        const cell = row * this.columns + column;
        const bits = this.bits[cell] ?? 0;
        const sign = this.signs[cell] ?? (bits === 0 ? ' ' : String.fromCharCode(0x2800 + bits));
        const role = this.roles[cell] ?? this.blank;
        const last = runs[runs.length - 1];
        if (last?.role === role) last.text += sign;
        else runs.push({ text: sign, role });
      }
      return runs;
    });
  }
}
