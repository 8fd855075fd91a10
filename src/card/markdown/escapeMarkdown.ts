/** Signs that can begin markup anywhere, with what must come before or after some of them; the last are the bare addresses that GitHub links. */
const SIGNS = /[\\`*_[<~|]|&(?=[#a-z])|(?<=[\w.+-])@(?=[\w.-])|(?<=www)\.|(?<=[ps]):(?=\/)/gi

/** Escapes what Markdown with GitHub's tables, check boxes and links would take for markup. Line breaks become spaces. */
export const escapeMarkdown = (text: string): string => text.replace(/[\r\n]+/g, ' ').replace(SIGNS, '\\$&')

/** Escapes what only at the start of a block is markup: headings, quotes, list markers, indented code. */
export const escapeStart = (line: string): string =>
  line
    .trim()
    .replace(/^(?=#{1,6}(?:\s|$)|>|[-+](?:\s|$|-))/, '\\')
    .replace(/^(\d{1,9})(?=[.)](?:\s|$))/, '$1\\')
