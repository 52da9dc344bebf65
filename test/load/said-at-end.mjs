// Loaded ahead of a program (node --import): at its end it says what it took, on its fourth channel.
import { writeSync } from 'node:fs'
import { isMainThread } from 'node:worker_threads'

if (isMainThread)
  process.on('exit', () => {
    const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage()
    writeSync(3, JSON.stringify({ cpuS: (userCPUTime + systemCPUTime) / 1e6, mostMB: maxRSS / 1024 }))
  })
