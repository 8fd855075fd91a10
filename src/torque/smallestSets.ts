/**
 * All smallest sets of tools that together cover every job, in the order of the tools. Each job is the bits of the tools
 * that cover it (never 0). At most 20 tools: the search tries up to 2^20 sets.
 */
export function smallestSets(coveredBy: readonly number[], tools: number): number[] {
  const jobs = decisiveJobs(coveredBy)
  if (jobs.length === 0) return [0]
  for (let size = 1; size <= tools; size += 1) {
    const found: number[] = []
    extend(0, 0, size)
    if (found.length > 0) return found

    function extend(set: number, from: number, left: number): void {
      const open = jobs.find((job) => (job & set) === 0)
      if (open === undefined && left === 0) found.push(set)
      // no remaining tool covers a job that only tools before `from` cover
      if (left === 0 || (open !== undefined && open >> from === 0)) return
      for (let tool = from; tool <= tools - left; tool += 1) extend(set | (1 << tool), tool + 1, left - 1)
    }
  }
  return []
}

/** Leaves out each job that every tool of another job also covers. */
function decisiveJobs(coveredBy: readonly number[]): number[] {
  const distinct = [...new Set(coveredBy)]
  return distinct.filter((job) => !distinct.some((other) => other !== job && (other & job) === other))
}
