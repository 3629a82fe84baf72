/** How the storage commits; only the durability harness builds a page that is not `strict`. Not set outside a build. */
declare const GRAINWRIGHT_DURABILITY: 'strict' | 'relaxed' | undefined
