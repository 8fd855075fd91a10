import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const ROOT = new URL('../../', import.meta.url).pathname

/** A doc comment, with the name of the export below it. */
const COMMENT = /\/\*\*([\s\S]*?)\*\/\s*(?:export (?:async )?(?:function\*?|const) (\w+))?/g

export interface Example {
  readonly name: string
  readonly code: string
  /** The function or constant below the comment, if it is exported. */
  readonly of?: string | undefined
}

/** The `@example` of every doc comment below `src/`. */
export function docExamples(): readonly Example[] {
  return readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .sort()
    .flatMap((file) => {
      const text = readFileSync(join(ROOT, 'src', file), 'utf8')
      return [...text.matchAll(COMMENT)].flatMap(([, comment = '', of]) =>
        comment
          .split(/@example/)
          .slice(1)
          .map((part, place) => ({
            name: `${file}${place === 0 ? '' : ` (${place + 1})`}`,
            code: plainCode(part),
            of,
          })),
      )
    })
}

function plainCode(part: string): string {
  const lines = part.split('\n').map((line) => line.replace(/^\s*\* ?/, ''))
  const end = lines.findIndex((line, place) => place > 0 && /^@[a-z]/.test(line))
  const body = (end < 0 ? lines : lines.slice(0, end)).join('\n')
  return /```(?:ts)?\n([\s\S]*?)```/.exec(body)?.[1] ?? body
}
