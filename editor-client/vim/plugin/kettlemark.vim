" Lets :ALEFix format formulas; g:ale_fixers has the last word.
if exists('g:loaded_kettlemark')
  finish
endif
let g:loaded_kettlemark = 1

let g:ale_fixers = get(g:, 'ale_fixers', {})
if type(g:ale_fixers) is v:t_dict && !has_key(g:ale_fixers, 'kettlemark')
  let g:ale_fixers.kettlemark = [function('kettlemark#fixer')]
endif
