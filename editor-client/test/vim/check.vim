" Works through a text in a real Vim with ALE as a writer would; ends with status 1 at the first surprise.
set nocompatible hidden noswapfile encoding=utf-8
let &runtimepath = escape($CLIENT, ' ,\') .. '/vim,' .. &runtimepath
filetype plugin on
syntax on
let g:ale_linters_explicit = 1
let g:ale_linters = {'kettlemark': ['kettlemark']}
let g:ale_kettlemark_jar = $JAR
let g:ale_hover_to_preview = 1
let g:ale_hover_cursor = 0
let g:ale_set_balloons = 0
let g:ale_lint_delay = 50
packadd ale
runtime plugin/kettlemark.vim

let s:patience = 15.0

function! s:say(...) abort
  call writefile([join(map(copy(a:000), 'type(v:val) == v:t_string ? v:val : string(v:val)'))], $LOG, 'a')
endfunction

function! s:fail(...) abort
  call call('s:say', ['FAILED'] + a:000)
  cquit
endfunction

function! s:verified(feature) abort
  call s:say(a:feature)
  call writefile([a:feature .. ': ok'], $RESULTS, 'a')
endfunction

function! s:await(what, condition) abort
  let l:start = reltime()
  while !a:condition()
    if reltimefloat(reltime(l:start)) > s:patience
      call s:fail('waited in vain for', a:what)
    endif
    sleep 20m
  endwhile
endfunction

function! s:go(line, word) abort
  call cursor(1, 1)
  call cursor(search(a:line, 'c'), 1)
  if search('\V' .. escape(a:word, '\'), 'c', line('.')) == 0
    call s:fail('no', a:word, 'in', getline('.'))
  endif
endfunction

function! s:line(line) abort
  return getline(search(a:line, 'cnw'))
endfunction

function! s:has(text, part) abort
  if stridx(a:text, a:part) < 0
    call s:fail(a:part, 'is not in', a:text)
  endif
endfunction

function! s:errors() abort
  let l:known = get(g:ale_buffer_info, bufnr(''), {})
  return filter(copy(get(l:known, 'loclist', [])), 'v:val.type ==# "E"')
endfunction

" What ALE shows in its preview window, once it does.
function! s:preview() abort
  for l:window in range(1, winnr('$'))
    if getwinvar(l:window, '&previewwindow')
      return join(getbufline(winbufnr(l:window), 1, '$'), "\n")
    endif
  endfor
  return ''
endfunction

" ALE asks with numbers; the answer is the number of the choice that holds a text.
let s:answer = ''
runtime autoload/ale/util.vim
function! ale#util#Input(message, value, ...) abort
  let l:menu = split(a:message, "\n")
  let l:chosen = matchstr(filter(copy(l:menu), 'stridx(v:val, s:answer) >= 0'), '')
  for l:choice in l:menu
    if l:choice =~# '^\s*\d\+' && stridx(l:choice, s:answer) >= 0
      return matchstr(l:choice, '\d\+')
    endif
  endfor
  return s:answer
endfunction

function! s:action(title) abort
  let s:answer = a:title
  ALECodeAction
endfunction

function! s:colours() abort
  for [l:line, l:word, l:expected] in [
        \ ['^formula', 'formula', 'kettlemarkSection'],
        \ ['^formula', '"Lemon', 'kettlemarkText'],
        \ ['^  percent', 'percent', 'kettlemarkFact'],
        \ ['^  all of', 'all', 'kettlemarkAmount'],
        \ ['^  mix', 'mix', 'kettlemarkVerb'],
        \ ['^  boil', 'dissolved', 'kettlemarkState'],
        \ ['^  cook', '°C', 'kettlemarkUnit'],
        \ ]
    call s:go(l:line, l:word)
    let l:colour = synIDattr(synID(line('.'), col('.'), 1), 'name')
    if l:colour !=# l:expected
      call s:fail(l:word, 'is', l:colour, 'not', l:expected)
    endif
  endfor
  call s:verified('colours')
endfunction

function! s:story() abort
  execute 'edit' fnameescape($LIBRARY .. '/lemon.kettle')
  call s:has(&filetype, 'kettlemark')
  call s:colours()
  call ale#Queue(0, 'lint_file')
  call s:await('a finding', {-> len(s:errors()) > 0})
  call s:has(s:errors()[0].text, 'sugar burns at 248 °C')
  call s:verified('findings')

  call s:go('white-sugar$', 'white-sugar')
  ALEHover
  call s:await('a hover', {-> s:preview() !=# ''})
  " By hand: 60 % of 1200 g.
  call s:has(s:preview(), '720')
  pclose
  call s:verified('hover')

  call s:go('^  all of', 'syrup')
  ALEGoToDefinition
  call s:await('the definition', {-> getline('.') =~# '^stage syrup'})
  call s:verified('definition')

  call s:go('^  all of', 'syrup')
  ALEFindReferences
  call s:await('the uses', {-> &filetype ==# 'ale-preview-selection'})
  if line('$') < 3
    call s:fail('too few uses', getline(1, '$'))
  endif
  pclose
  call s:verified('references')

  call s:go('^  cook', '248')
  call s:action('Write 120 °C')
  call s:await('the fix', {-> s:line('^  cook') =~# '120 °C'})
  call ale#Queue(0, 'lint_file')
  call s:await('no more errors', {-> empty(s:errors())})
  call s:verified('fix')

  call s:go('^formula', 'lemon-chews')
  call s:action('2400 g')
  call s:await('the scaling', {-> s:line('^  batch') =~# '2400 g'})
  call s:verified('scaling')

  call s:go('rook-zest$', 'rook-zest')
  let s:answer = 'rook-peel'
  ALERename
  call s:await('the rename', {-> s:line('^  mix') =~# 'rook-peel'})
  silent wall
  call s:verified('renaming across files')

  ALEFix
  call s:await('the layout', {-> s:line('^  mix') ==# '  mix       rook-peel, syrup'})
  call s:verified('formatting')
  silent wall
  ALEStopAllLSPs
endfunction

function! s:awkward() abort
  call mkdir($WORK .. '/alone')
  call writefile(readfile($CLIENT .. '/test/editors/library/lemon.kettle'), $WORK .. '/alone/one.kettle')
  execute 'edit' fnameescape($WORK .. '/alone/one.kettle')
  call ale#Queue(0, 'lint_file')
  call s:await('a finding', {-> len(s:errors()) > 0})
  call s:verified('a file of its own')
  ALEStopAllLSPs

  compiler kettlemark
  silent make
  call s:has(getqflist()[0].text, 'sugar burns at 248 °C')
  call s:has(getqflist()[0].type, 'e')
  call s:has(getline(getqflist()[0].lnum), '248')
  call s:verified('the checker fills the list of problems')
endfunction

try
  call s:story()
  call s:awkward()
catch
  call s:fail(v:exception, v:throwpoint)
endtry
qall!
