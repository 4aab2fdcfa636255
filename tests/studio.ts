/** The library's studio for the tests, and kinds of drills in it. */
import { type Drill, kindOf as kindIn } from '../src/drills/kinds/index.js';
import type { Kind } from '../src/drills/types.js';
import { libraryStudio, type Pigment, paintOf as paintIn } from '../src/paints/index.js';

export const STUDIO = libraryStudio();

export const kindOf = (drill: Drill): Kind<Drill> => kindIn(STUDIO, drill);

export const paintOf = (id: string): Pigment => paintIn(STUDIO, id);
