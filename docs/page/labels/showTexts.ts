/** Writes the words of a language into the page; its HTML has the English ones, for readers without scripts. */
export function showTexts(language: string, texts: { readonly [name: string]: string }): void {
  document.documentElement.lang = language
  for (const element of document.querySelectorAll<HTMLElement>('[data-text]'))
    element.textContent = texts[element.dataset['text'] ?? ''] ?? ''
  for (const element of document.querySelectorAll<HTMLElement>('[data-label]'))
    element.setAttribute('aria-label', texts[element.dataset['label'] ?? ''] ?? '')
}

/** Fills the list of languages, each by its own name. */
export function listLanguages(list: HTMLSelectElement, tags: readonly string[]): void {
  for (const tag of ['en', ...tags]) {
    const name = new Intl.DisplayNames([tag], { type: 'language' }).of(tag) ?? tag
    list.append(Object.assign(new Option(name, tag), { lang: tag }))
  }
}
