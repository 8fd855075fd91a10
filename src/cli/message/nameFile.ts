import { INPUT_NAME } from '../cliIo.js'
import type { CliWords } from './cliWords.js'

/** The name of a file; standard input has a word. */
export const nameFile = (name: string, { standardInput }: CliWords): string =>
  name === INPUT_NAME ? standardInput : name
