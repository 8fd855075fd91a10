import { cleanLine } from '../../src/cli/cleanLine.js'
import { UsageError } from '../../src/cli/cliIo.js'
import { en } from '../../src/cli/message/en/index.js'
import { renderUsageError } from '../../src/cli/message/renderUsageError.js'

/** The English text of the usage error of a call; another error, or none, fails the test. */
export async function usageText(call: () => unknown): Promise<string> {
  try {
    await call()
  } catch (error) {
    if (error instanceof UsageError) return renderUsageError(error as UsageError, en, cleanLine)
    throw error
  }
  throw new Error('no error')
}
