/** Levels; documents have no more than 32, and the YAML reader stands many more than this. */
const MOST_LEVELS = 500

/**
 * Whether a text nests deeper than the YAML reader should be asked to go: it works down level by level, and at some tens
 * of thousands it does not come back. Counted without reading: open brackets, also those in texts, and what a line begins
 * with.
 */
export function isNestedTooDeep(text: string): boolean {
  let open = 0
  let indent = 0
  let atStart = true
  for (let place = 0; place < text.length; place++) {
    const code = text.charCodeAt(place)
    if (code === NEW_LINE) {
      atStart = true
      indent = 0
    } else if (atStart && BEGINNINGS.has(code)) {
      indent += 1
      if (indent > 2 * MOST_LEVELS) return true
    } else {
      atStart = false
      if (code === OPEN_LIST || code === OPEN_OBJECT) open += 1
      else if (code === CLOSE_LIST || code === CLOSE_OBJECT) open = Math.max(0, open - 1)
      if (open > MOST_LEVELS) return true
    }
  }
  return false
}

const NEW_LINE = 0x0a
const OPEN_LIST = 0x5b
const CLOSE_LIST = 0x5d
const OPEN_OBJECT = 0x7b
const CLOSE_OBJECT = 0x7d
/** Space, tab, `-`, `:` and `?`: what a line of lists and objects begins with. */
const BEGINNINGS: ReadonlySet<number> = /* @__PURE__ */ new Set([0x20, 0x09, 0x2d, 0x3a, 0x3f])
