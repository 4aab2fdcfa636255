/** A drill for a screen reader: top to bottom, everything in words, the current choice last. */

import { Text } from 'ink';
import { optionLabel } from '../../drills/answers.js';
import type { Field, FieldOption } from '../../drills/types.js';
import { cleanText } from '../../text/sanitize.js';
import { sayAll } from '../../words/tell.js';
import { toVoice } from '../../words/voice.js';
import { chosenIndex } from '../kit/fields.js';
import { Frame } from '../kit/frame.js';
import { lookOf, spokenLook, swatchWords, voiceOf } from '../kit/look.js';
import { sceneLines } from '../kit/sheet.js';
import type { DrillScreen } from '../kit/state.js';
import { useSurroundings } from '../kit/surroundings.js';
import { drillTitle } from '../kit/titles.js';
import { hintTexts } from './scene.js';

export function SpokenDrill({ screen }: { readonly screen: DrillScreen }): React.JSX.Element {
  const { state, world } = useSurroundings();
  const { drill } = screen;
  const kind = world.kindOf(drill);
  const { set } = state;
  const scene = world.sceneOf(drill);
  const scale = state.settings.valueScale;
  const voice = voiceOf(state.settings);
  const spoken = (option: FieldOption): string =>
    [
      cleanText(toVoice(optionLabel(option, scale), voice), 80),
      option.swatch === undefined ? '' : spokenLook(lookOf(option.swatch), voice),
      cleanText(toVoice(option.note ?? '', voice), 160),
    ]
      .filter(Boolean)
      .join(', ');
  const choice = (field: Field, index: number): string => {
    const at = chosenIndex(field, screen.answer);
    const option = field.options[at];
    const here = index === screen.focus ? 'Now choosing ' : '';
    return `${here}${field.label}: ${option === undefined ? 'nothing' : spoken(option)}. ${at + 1} of ${field.options.length}.`;
  };
  const goal = sayAll(kind.goalLines(drill), voice);
  const place = screen.worked
    ? 'worked example, the choice is made: press Enter to lay it down'
    : set === undefined
      ? ''
      : `drill ${Math.min(set.index + 1, set.items.length)} of ${set.items.length}`;
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
    <Frame title={drillTitle(world, screen)} side={place}>
      {lines.map((line) => (
        <Text key={line}>{line}</Text>
      ))}
    </Frame>
  );
}
