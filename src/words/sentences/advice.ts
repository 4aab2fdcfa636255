/** What to try next, by the mistaken idea that an answer showed. */
import { IDEAS } from '../ideas.js';

export const ADVICE = {
  advice: ({ idea }: { readonly idea: string }): string => IDEAS.get(idea)?.instead ?? '',
};
