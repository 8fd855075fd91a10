/**
 * Finds all smallest sets of tools that together cover every job, in the order of the tools. Each job is a
 * number whose bits are the tools that cover it (never 0). At most 20 tools: the search tries up to 2^20
 * sets.
 */
export function findSmallestSets(coveredBy: readonly number[], tools: number): number[] {
  const jobs = omitImpliedJobs(coveredBy)
  if (jobs.length === 0) return [0]
  for (let size = 1; size <= tools; size += 1) {
    const found: number[] = []
    extendSet(0, 0, size)
    if (found.length > 0) return found

    function extendSet(set: number, from: number, left: number): void {
      const uncoveredJob = jobs.find((job) => (job & set) === 0)
      if (uncoveredJob === undefined && left === 0) found.push(set)
      // no remaining tool covers a job that only tools before `from` cover
      if (left === 0 || (uncoveredJob !== undefined && uncoveredJob >> from === 0)) return
      for (let tool = from; tool <= tools - left; tool += 1) extendSet(set | (1 << tool), tool + 1, left - 1)
    }
  }
  return []
}

/** Omits each job that every tool of another job also covers. */
function omitImpliedJobs(coveredBy: readonly number[]): number[] {
  const distinctJobs = [...new Set(coveredBy)]
  return distinctJobs.filter((job) => !distinctJobs.some((other) => other !== job && (other & job) === other))
}
