/** What can be wrong with YAML. */
export type YamlProblem =
  | 'tab'
  | 'mapColumn'
  | 'listColumn'
  | 'mapInLine'
  | 'listAsKey'
  | 'noColon'
  | 'keyOverLines'
  | 'noClosingQuote'
  | 'noComma'
  | 'noDash'
  | 'bracketColumn'
  | 'reservedSign'
  | 'commentSpace'
  | 'unexpected'
  | 'alias'
  | 'keyNotText'
  | 'severalDocuments'

/** How the English texts of the YAML reader, and our own, begin. */
const BEGINNINGS: readonly (readonly [string, YamlProblem])[] = [
  ['Tabs are not allowed as indentation', 'tab'],
  ['All mapping items must start at the same column', 'mapColumn'],
  ['All sequence items must start at the same column', 'listColumn'],
  ['Nested mappings are not allowed in compact mappings', 'mapInLine'],
  ['A block sequence may not be used as an implicit map key', 'listAsKey'],
  ['Implicit map keys need to be followed by map values', 'noColon'],
  ['Implicit keys need to be on a single line', 'keyOverLines'],
  ['Missing closing ', 'noClosingQuote'],
  ['Missing , ', 'noComma'],
  ['Sequence item without - indicator', 'noDash'],
  ['Flow end indicator should be more indented', 'bracketColumn'],
  ['Flow sequence in block collection', 'bracketColumn'],
  ['Flow map in block collection', 'bracketColumn'],
  ['Block collections are not allowed within flow', 'noComma'],
  ['Plain value cannot start with ', 'reservedSign'],
  ['Comments must be separated from other tokens', 'commentSpace'],
  ['Unexpected ', 'unexpected'],
  ['anchors and aliases are not allowed', 'alias'],
  ['a key must be a text', 'keyNotText'],
  ['more than one document', 'severalDocuments'],
]

/** The problem of an English text; undefined if it is not in the table. */
export const findYamlProblem = (text: string): YamlProblem | undefined =>
  BEGINNINGS.find(([beginning]) => text.startsWith(beginning))?.[1]
