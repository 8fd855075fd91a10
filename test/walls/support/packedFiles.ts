import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/**
 * The files of an unpacked library, as test/walls/packed-files.txt has them: `*` for the chunks that a build shares and
 * names by their hash, and for the vectors, which rules.json lists.
 */
export function packedFiles(app: string): readonly string[] {
  const files = readdirSync(join(app, 'node_modules/drivetrain-service'), {
    recursive: true,
    withFileTypes: true,
  })
    .filter((entry) => !entry.isDirectory())
    .map(({ parentPath, name }) =>
      join(parentPath, name).replace(/^.*\/node_modules\/drivetrain-service\//, ''),
    )
    .map((file) =>
      file.replace(/^(dist|dist\/shared)\/\w+(?:-[A-Z0-9]{8})?-[\w-]{8}((?:\.d)?\.[jt]s)$/, '$1/*$2'),
    )
    .map((file) => file.replace(/^(schemas\/v1\/vectors\/\w+\/).*\.json$/, '$1*.json'))
  return [...new Set(files)].sort()
}

export const readPackedList = (): readonly string[] =>
  readFileSync('test/walls/packed-files.txt', 'utf8').trimEnd().split('\n')
