/** What is said of things put in an order. */
export const ORDER = {
  'order-chosen': ({ names }: { readonly names: readonly string[] }): string =>
    `You put them in the order ${names.join(', ')}.`,
};
