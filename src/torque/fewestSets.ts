/**
 * The smallest sets of tools that between them cover every job, each job given as the bits of the tools that cover
 * it (never 0). All smallest sets, in the order of the tools. At most 20 tools: 2^20 sets are looked at.
 */
export function fewestSets(coveredBy: readonly number[], tools: number): number[] {
  const jobs = narrowest(coveredBy)
  if (jobs.length === 0) return [0]
  for (let size = 1; size <= tools; size += 1) {
    const found: number[] = []
    extend(0, 0, size)
    if (found.length > 0) return found

    function extend(set: number, from: number, left: number): void {
      const open = jobs.find((job) => (job & set) === 0)
      if (open === undefined && left === 0) found.push(set)
      // what is left cannot reach a job that only tools before `from` cover
      if (left === 0 || (open !== undefined && open >> from === 0)) return
      for (let tool = from; tool <= tools - left; tool += 1) extend(set | (1 << tool), tool + 1, left - 1)
    }
  }
  return []
}

/** A job covered by all tools that cover another job is covered along with it. */
function narrowest(coveredBy: readonly number[]): number[] {
  const distinct = [...new Set(coveredBy)]
  return distinct.filter((job) => !distinct.some((other) => other !== job && (other & job) === other))
}
