/** To whom the screens speak. */
import { scaleEnds, VALUE_SCALES, type ValueScaleId } from '../../colour/index.js';
import type { Voice } from '../../words/voice.js';
import type { Settings } from './stage.js';

/** How this learner is spoken to. */
export const voiceOf = ({ valueScale, screenReader }: Settings): Voice => ({
  scale: valueScale,
  spoken: screenReader,
});

/** A value scale in words, with its ends. */
export const scaleLabel = (id: ValueScaleId): string =>
  `${VALUE_SCALES[id].title}: ${scaleEnds(VALUE_SCALES[id])}`;
