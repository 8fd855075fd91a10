/** A text with values; numbers are whole and not negative. */
export type Text<Strings extends string = never, Numbers extends string = never> = (
  values: { readonly [Name in Strings]: string } & { readonly [Name in Numbers]: number },
) => string
