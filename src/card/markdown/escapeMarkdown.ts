/**
 * Characters that can begin markup anywhere, some only next to certain other characters; last, the bare addresses that
 * GitHub links.
 */
const SIGNS = /[\\`*_[<~|]|&(?=[#a-z])|(?<=[\w.+-])@(?=[\w.-])|(?<=www)\.|(?<=[ps]):(?=\/)/gi

/**
 * Escapes text that GitHub's Markdown (with tables, check boxes and links) would read as markup. Line breaks become
 * spaces.
 */
export const escapeMarkdown = (text: string): string => text.replace(/[\r\n]+/g, ' ').replace(SIGNS, '\\$&')

/**
 * Escapes text that is markup only at the start of a block: headings, quotes, list markers, indented code.
 */
export const escapeStart = (line: string): string =>
  line
    .trim()
    .replace(/^(?=#{1,6}(?:\s|$)|>|[-+](?:\s|$|-))/, '\\')
    .replace(/^(\d{1,9})(?=[.)](?:\s|$))/, '$1\\')
