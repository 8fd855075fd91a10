/** The class of the element around a paper. */
export const PAPER_CLASS = 'service-card'

/** Limits the rules of a style to the paper, so that they change nothing else in an app. `&` is the paper itself. */
export const scopeStyle = (style: string): string =>
  // A comma within parentheses, such as `:is(a,b)`, separates no selectors of the rule.
  style.replaceAll(/(^|[{}])\s*([^{}@]+)\{/g, (_rule, before: string, selectors: string) => {
    const scoped = selectors.split(/,(?![^(]*\))/).map((selector) => {
      const inPaper = selector.includes('&') ? selector : `& ${selector}`
      return inPaper.replaceAll('&', `.${PAPER_CLASS}`)
    })
    return `${before}${scoped.join(',')}{`
  })
