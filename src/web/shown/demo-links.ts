import type { DemoLink } from '../../../views/brief/demo-list.tsx'
import { demos } from '../../brief/demos.ts'
import { packBrief } from '../asked/packed-brief.ts'

export const demoLinks: readonly DemoLink[] = demos.map(({ id, title, shows, brief }) => ({
  id,
  title,
  shows,
  packed: packBrief(brief),
}))
