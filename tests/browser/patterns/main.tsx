import { createRoot } from 'react-dom/client'
import '@/ui/look/tokens.css'
import '@/ui/look/base.css'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { Units } from '@/ui/app/units'
import { PAGES } from './pages'

const asked = new URLSearchParams(location.search)
const theme = asked.get('theme')
if (theme !== null) document.documentElement.dataset['theme'] = theme
const Shown = PAGES[asked.get('page') ?? 'controls'] ?? PAGES['controls']!
const { hook } = memoryLocation({ path: '/job/0151/call' })

createRoot(document.getElementById('app')!).render(
  <Units value={asked.get('units') === 'metric' ? 'metric' : 'trade'}>
    <Router hook={hook}>
      <Shown />
    </Router>
  </Units>,
)
