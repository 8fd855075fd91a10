import * as z from 'zod/mini'

/**
 * A shape that is built at its first use and kept: zod's objects are slow to make, and nothing may run at import.
 * While it is built, zod's setting `jitless` is on, so that zod neither compiles code nor tries whether it could (pages
 * with a strict content policy report even the try); the setting is back before anyone else can run.
 */
export function buildOnce<Shape>(build: () => Shape): () => Shape {
  let built: Shape | undefined
  return () => {
    if (built !== undefined) return built
    const config = z.config()
    const before = Object.getOwnPropertyDescriptor(config, 'jitless')
    config.jitless = true
    try {
      built = build()
    } finally {
      if (before === undefined) delete config.jitless
      else Object.defineProperty(config, 'jitless', before)
    }
    return built
  }
}
