if exists('b:did_ftplugin')
  finish
endif
let b:did_ftplugin = 1

" Names carry hyphens and accents: a word is a whole name.
setlocal iskeyword=@,48-57,_,-,192-255
setlocal comments=:# commentstring=#\ %s
setlocal expandtab

let b:undo_ftplugin = 'setlocal iskeyword< comments< commentstring< expandtab<'
