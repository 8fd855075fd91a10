import type { CliCodes } from '../../cli/codes.js'
import type { Texts } from '../catalogue.js'

export const cliTexts: Texts<CliCodes> = {
  'cli/not-yaml': ({ problem }) => `This is not YAML that can be read: ${problem}`,
}
