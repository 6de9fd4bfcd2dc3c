" :compiler kettlemark, then :make, checks the folder of the text and fills the quickfix list.
if exists('current_compiler')
  finish
endif
let current_compiler = 'kettlemark'

let s:command = shellescape(kettlemark#java()) .. ' -jar ' .. shellescape(kettlemark#jar())
      \ .. ' check --format line ' .. shellescape(kettlemark#root(expand('%:p:h')))
execute 'CompilerSet makeprg=' .. escape(s:command, ' "|\')
CompilerSet errorformat=%f:%l:%c:\ %t%*[a-z]:\ %m
