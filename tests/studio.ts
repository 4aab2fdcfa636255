/** The library's studio for the tests, and kinds of drills in it. */
import { type Drill, kindOf as kindIn } from '../src/drills/kinds/index.js';
import type { DrillCommon, Grade, Kind } from '../src/drills/types.js';
import { libraryStudio, type Pigment, paintOf as paintIn } from '../src/paints/index.js';
import { sayAll } from '../src/words/tell.js';
import { WRITTEN } from '../src/words/voice.js';

export const STUDIO = libraryStudio();

export const kindOf = (drill: Drill): Kind<Drill> => kindIn(STUDIO, drill);

export const paintOf = (id: string): Pigment => paintIn(STUDIO, id);

/** What a grade says, as it is read in painter's steps. */
export const said = ({ told }: Grade): string[] => sayAll(told, WRITTEN);

/** What a drill asks, as it is read in painter's steps. */
export const asked = <D extends DrillCommon>(kind: Kind<D>, drill: D): string[] =>
  sayAll(kind.goalLines(drill), WRITTEN);
