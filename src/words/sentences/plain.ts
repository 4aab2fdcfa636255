/** A line that is already words. */
export const PLAIN = { plain: ({ text }: { readonly text: string }): string => text };
