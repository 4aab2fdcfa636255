/** What the state of every program on the screen holds, and what its screens may look up. */
import type { ValueScaleId } from '../../colour/index.js';
import type { Answer, DrillCommon, Kind } from '../../drills/types.js';
import type { Studio } from '../../paints/index.js';
import type { DrillScene } from '../../pictures/scene.js';
import type { ColourLevel, ColourSetting } from './colour-level.js';

export interface Size {
  readonly columns: number;
  readonly rows: number;
}

export interface Settings {
  readonly valueScale: ValueScaleId;
  /** Id of a palette. */
  readonly palette: string;
  readonly screenReader: boolean;
  readonly colour: ColourSetting;
}

/** Fixed for the run of a program, but for the studio, which follows the box in use. */
export interface World {
  /** The paints, the paper and the boxes at hand. */
  readonly studio: Studio;
  kindOf(drill: DrillCommon): Kind;
  familyName(id: string): string;
  /** The picture of a drill, open or with an answer in it; undefined where nothing of the drill lies in one. The same one each time. */
  sceneOf(drill: DrillCommon, answer?: Answer): DrillScene | undefined;
  /** What colour level a setting gives here. */
  colourLevelFor(setting: ColourSetting): ColourLevel;
}

/** @typeParam E what may be asked of the outside */
export interface Stage<E = unknown> {
  readonly size: Size;
  readonly settings: Settings;
  readonly colourLevel: ColourLevel;
  /** One line at the foot, until the next key. */
  readonly notice?: string;
  /** Shown as long as it holds: what could not be saved. */
  readonly savingNote?: string;
  /** Ids of the caution texts shown in this run. */
  readonly cautioned: readonly string[];
  /** Asked of the outside, in order; the shell takes them out and has each done once. */
  readonly effects?: readonly E[];
  /** Set when the program is left: its exit code, or the name of the program to go on with. */
  readonly ending?: number | string;
}

/** Exit code after Ctrl+C. */
export const INTERRUPTED = 130;
