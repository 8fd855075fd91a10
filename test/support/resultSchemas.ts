import { RESULT_TITLES, type ResultName } from './resultTypes.js'
import type { JsonSchema } from './toJsonSchema.js'
import { makeTypeSchema, readTypes } from './typeSchema.js'

export const RESULT_NAMES = Object.keys(RESULT_TITLES) as readonly ResultName[]

/** The JSON Schemas of what the library gives, from its interfaces. */
export function makeResultSchemas(): ReadonlyMap<ResultName, JsonSchema> {
  const { checker, source } = readTypes('test/support/resultTypes.ts')
  const module = checker.getSymbolAtLocation(source)
  const symbol = module && checker.getExportsOfModule(module).find(({ name }) => name === 'ResultTypes')
  if (symbol === undefined) throw new Error('no ResultTypes')
  const results = checker.getDeclaredTypeOfSymbol(symbol)
  return new Map(
    RESULT_NAMES.map((name) => {
      const type = checker.getPropertyOfType(results, name)
      if (type === undefined) throw new Error(`no type ${name}`)
      const schema = {
        $schema: 'https://json-schema.org/draft/2020-12/schema',
        $id: `https://unpkg.com/drivetrain-service/schemas/v1/${name}.json`,
        title: RESULT_TITLES[name],
        ...makeTypeSchema(checker.getTypeOfSymbol(type), checker),
      }
      return [name, schema]
    }),
  )
}
