import { TEXT_NAMES, type Texts } from './readTexts.js'

/** What a link keeps. */
export interface Shared {
  readonly texts: Texts
  /** `YYYY-MM-DD`; absent: the day on which the link is opened. */
  readonly today?: string
  readonly ambient?: number
  readonly units?: string
  readonly language?: string
}

/** In bytes. Larger contents are no work of this page. */
const MAX_SHARED = 2_000_000
const PREFIX = '#s='

/** Writes the content into the fragment of a link, which a browser never sends. */
export async function writeFragment(shared: Shared): Promise<string> {
  const bytes = await pass(
    new TextEncoder().encode(JSON.stringify(shared)),
    new CompressionStream('deflate-raw'),
  )
  return PREFIX + toBase64Url(bytes)
}

/** Reads the fragment of a link: `none` if it has no content, `broken` if it was cut or changed. */
export async function readFragment(fragment: string): Promise<Shared | 'none' | 'broken'> {
  if (!fragment.startsWith(PREFIX)) return 'none'
  try {
    const bytes = await pass(
      fromBase64Url(fragment.slice(PREFIX.length)),
      new DecompressionStream('deflate-raw'),
    )
    const read: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
    return isShared(read) ? read : 'broken'
  } catch {
    return 'broken'
  }
}

function isShared(value: unknown): value is Shared {
  if (typeof value !== 'object' || value === null) return false
  const { texts, today, ambient, units, language } = value as { readonly [Key in keyof Shared]: unknown }
  const isOptional = (type: string, one: unknown): boolean => one === undefined || typeof one === type
  return (
    typeof texts === 'object' &&
    texts !== null &&
    TEXT_NAMES.every((name) => typeof (texts as { readonly [key: string]: unknown })[name] === 'string') &&
    (today === undefined || (typeof today === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(today))) &&
    isOptional('number', ambient) &&
    isOptional('string', units) &&
    isOptional('string', language)
  )
}

/** Sends bytes through a stream; a small link can hold a text of many gigabytes, so the result is limited. */
async function pass(
  bytes: Uint8Array<ArrayBuffer>,
  through: CompressionStream | DecompressionStream,
): Promise<Uint8Array> {
  const reader = new Blob([bytes]).stream().pipeThrough(through).getReader()
  const parts: Uint8Array[] = []
  let length = 0
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    parts.push(next.value)
    length += next.value.length
    if (length > MAX_SHARED) {
      await reader.cancel()
      throw new RangeError(`more than ${MAX_SHARED} bytes`)
    }
  }
  const joined = new Uint8Array(length)
  let at = 0
  for (const part of parts) {
    joined.set(part, at)
    at += part.length
  }
  return joined
}

/** Base64 for addresses (RFC 4648, section 5, from memory), without padding. */
function toBase64Url(bytes: Uint8Array): string {
  let text = ''
  for (let at = 0; at < bytes.length; at += 0x8000)
    text += String.fromCharCode(...bytes.subarray(at, at + 0x8000))
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
}

const fromBase64Url = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0))
