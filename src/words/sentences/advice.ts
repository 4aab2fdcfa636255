/** What to try next, by the mistaken idea that an answer showed. */
import { IDEAS, type Remedy } from '../ideas.js';

export const ADVICE = {
  advice: ({ idea, remedy }: { readonly idea: string; readonly remedy?: Remedy | undefined }): string => {
    const known = IDEAS.get(idea);
    return (remedy === undefined ? undefined : known?.or?.[remedy]) ?? known?.instead ?? '';
  },
};
