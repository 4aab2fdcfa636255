/** A drill for a screen reader: top to bottom, everything in words, the current choice last. */

import { Text } from 'ink';
import { optionLabel } from '../../drills/answers.js';
import type { Field, FieldOption } from '../../drills/types.js';
import { cleanText } from '../../text/sanitize.js';
import { atStrength } from '../../words/laid.js';
import { lookOf, spokenLook, swatchWords } from '../../words/look.js';
import { sayAll } from '../../words/tell.js';
import { toVoice } from '../../words/voice.js';
import { chosenIndex } from '../kit/fields.js';
import { voiceOf } from '../kit/look.js';
import { useSurroundings } from '../kit/surroundings.js';
import { sceneLines } from '../sheet/view.js';
import type { Question } from './question.js';
import { hintTexts } from './scene.js';

export function SpokenDrill({ screen }: { readonly screen: Question }): React.JSX.Element {
  const { state, world } = useSurroundings();
  const { drill } = screen;
  const kind = world.kindOf(drill);
  const scene = world.sceneOf(drill);
  const scale = state.settings.valueScale;
  const voice = voiceOf(state.settings);
  const spoken = (option: FieldOption): string =>
    [
      cleanText(toVoice(optionLabel(option, scale), voice), 80),
      option.swatch === undefined
        ? ''
        : toVoice(`${spokenLook(lookOf(option.swatch), voice)}${atStrength(option.swatchStrength)}`, voice),
      cleanText(toVoice(option.note ?? '', voice), 160),
    ]
      .filter(Boolean)
      .join(', ');
  const choice = (field: Field, index: number): string => {
    const at = chosenIndex(field, screen.answer);
    const option = field.options[at];
    const here = index === screen.focus ? 'Now choosing ' : '';
    const others = field.options
      .filter((_, other) => other !== at)
      .map((other) => cleanText(toVoice(optionLabel(other, scale), voice), 80));
    const rest = index === screen.focus && others.length > 0 ? ` The others: ${others.join('; ')}.` : '';
    return `${here}${field.label}: ${option === undefined ? 'nothing' : spoken(option)}. ${at + 1} of ${field.options.length}.${rest}`;
  };
  const goal = sayAll(kind.goalLines(drill), voice);
  const lines = [
    ...(screen.message === undefined ? [] : [screen.message]),
    cleanText(drill.scene, 600),
    ...(scene === undefined ? [] : [sceneLines(scene, state.settings).join(' ')]),
    cleanText(drill.ask, 200),
    // A question's goal lines may say the same of each colour, with its paint.
    ...kind
      .given(drill)
      .filter(({ label }) => !goal.some((line) => line.startsWith(`${label}: `)))
      .map((swatch) => `${swatch.label}: ${swatchWords(swatch, voice)}.`),
    ...goal.map((line) => `${/^(value|chroma|hue): /.test(line) ? 'Goal, ' : ''}${cleanText(line, 200)}.`),
    ...hintTexts(screen),
    ...screen.fields.map(choice),
  ];
  return (
    <>
      {lines.map((line) => (
        <Text key={line}>{line}</Text>
      ))}
    </>
  );
}
