/** The pictures that scenes are set in: which there are, and what areas each has. */
import * as v from 'valibot';
import { didYouMean } from '../text/nearest.js';
import data from './data/pictures.json' with { type: 'json' };

/** A picture by name: where it is set, and its areas from back to front. */
export interface PictureName {
  readonly id: string;
  readonly place: string;
  readonly title: string;
  readonly areas: readonly string[];
}

export const PICTURES: readonly PictureName[] = data.pictures;

const IDS = PICTURES.map(({ id }) => id);

export const pictureSchema = v.pipe(
  v.string('must be the id of a picture'),
  v.check(
    (id) => IDS.includes(id),
    ({ input }) => `no picture is called "${String(input).slice(0, 60)}".${didYouMean(String(input), IDS)}`,
  ),
);
