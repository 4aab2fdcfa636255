/** What a program on the screen is: its state, what changes it, its keys, how it looks and what it asks of the outside. */
import type { ReactNode } from 'react';
import type { Glyphs } from './glyphs.js';
import type { Binding } from './keys.js';
import type { Size, Stage, World } from './stage.js';

/** What comes to every program. Times are milliseconds since 1970. */
export type Happening =
  | { readonly type: 'key'; readonly key: string; readonly at: number }
  | { readonly type: 'resize'; readonly size: Size }
  | { readonly type: 'tick'; readonly at: number };

/** A screen as it stands in its frame. */
export interface View {
  /** In words; several where a shorter one is to stand on a narrow screen. */
  readonly title: string | readonly string[];
  /** At the right of the title. */
  readonly side?: string;
  readonly body: ReactNode;
}

/**
 * A program: practice, the bench, a sitting, a quiz in the room.
 * @typeParam A what comes to this program alone
 * @typeParam E what it asks of the outside
 */
export interface Program<S extends Stage<E>, A = never, E = unknown> {
  /** What an ending calls it by. */
  readonly name: string;
  readonly world: World;
  readonly initial: S;
  /** Signs that this terminal has. */
  readonly glyphs: Glyphs;
  /** Milliseconds since 1970. */
  now(): number;
  /** Pure. */
  update(state: S, action: A | Happening): S;
  /** The keys that work now, most used first. */
  keys(state: S): readonly Binding[];
  view(state: S, glyphs: Glyphs): View;
  /** Called after each change and before it is drawn: what must be on the disk by then. Gives the state as it is drawn. */
  keep?(state: S): S;
  /** Whether the clock has to be watched. */
  ticks?(state: S): boolean;
  /** Carries out what was asked for. A fault that it does not expect goes through: it ends the program. */
  perform?(effect: E, state: S, dispatch: (action: A) => void): Promise<void>;
}
