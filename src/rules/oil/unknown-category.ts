import { documentRule } from '../ruleMakers.js'

/**
 * A service category that does not exist, such as GL-9. No label has it, so no oil could meet it.
 * Judges: The `category` of every grade oil of a sheet, including overrides, and each of the `categories` of
 * every container of a stock. Finds `GL` and a number that is not 1 to 6, in upper or lower case, with an
 * optional hyphen or space between, and with or without `API` in front. Other texts are not judged.
 * Place: `<oils>/choices/<place>/category`, or `/containers/<id>/oil/categories/<place>`
 * Params: category: as written
 * Harm: job
 * Source: API 1560 has GL-1 to GL-6 and MT-1, as quoted by lubricant makers.
 */
export const rule = documentRule('spec-sheet', 'stock')(
  'oil/unknown-category',
  'warning',
  ({ document, sheet }) => {
    const namedCategories =
      document.kind === 'stock'
        ? Object.entries(document.containers).flatMap(([id, { oil }]) =>
            (oil.categories ?? []).map((category, place) => ({
              path: `/containers/${id}/oil/categories/${place}`,
              category,
            })),
          )
        : (sheet?.oils ?? []).flatMap(({ path, choices }) =>
            choices.flatMap((oil, place) =>
              oil.kind === 'grade' && oil.category !== undefined
                ? [{ path: `${path}/choices/${place}/category`, category: oil.category }]
                : [],
            ),
          )
    return namedCategories.flatMap(({ path, category }) => {
      const number = /^(?:API)?[ -]?GL[ -]?([0-9]+)$/i.exec(category.trim())?.[1]
      return number === undefined || /^[1-6]$/.test(number) ? [] : [{ path, params: { category } }]
    })
  },
)
