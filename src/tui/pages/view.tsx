/** Progress and help: texts to scroll through. */
import { Text } from 'ink';
import { Frame } from '../kit/frame.js';
import { useSurroundings } from '../kit/surroundings.js';
import { TextPage } from '../kit/text-page.js';
import { textOf } from './texts.js';

export function TextScreen({
  title,
  top,
}: {
  readonly title: string;
  readonly top: number;
}): React.JSX.Element {
  const { state, world } = useSurroundings();
  const page = textOf(state, world);
  if (state.settings.screenReader) {
    return (
      <Frame title={title}>
        <Text>{page.lines.slice(top, top + page.rows).join('\n')}</Text>
      </Frame>
    );
  }
  return (
    <Frame title={title}>
      <TextPage page={page} top={top} />
    </Frame>
  );
}
