" What Vim needs beside ALE: the folder of a library, the formatter and the checker.

" The nearest folder under version control, else the topmost that holds formulas without a break.
function! kettlemark#root(folder) abort
  let l:library = a:folder
  let l:current = a:folder
  let l:unbroken = 1
  while 1
    if isdirectory(l:current .. '/.git') || filereadable(l:current .. '/.git')
      return l:current
    endif
    let l:unbroken = l:unbroken && !empty(glob(escape(l:current, '[]*?\') .. '/*.kettle', 1, 1))
    if l:unbroken
      let l:library = l:current
    endif
    let l:parent = fnamemodify(l:current, ':h')
    if l:parent ==# l:current
      return l:library
    endif
    let l:current = l:parent
  endwhile
endfunction

function! kettlemark#java() abort
  return get(g:, 'ale_kettlemark_java', 'java')
endfunction

function! kettlemark#jar() abort
  return expand(get(g:, 'ale_kettlemark_jar', ''))
endfunction

" The formatter of the command line, as a fixer of ALE.
function! kettlemark#fixer(buffer) abort
  return {'command': shellescape(kettlemark#java()) .. ' -XX:+UseSerialGC -jar '
        \ .. shellescape(kettlemark#jar()) .. ' format -'}
endfunction
