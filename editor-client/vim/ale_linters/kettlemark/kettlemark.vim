" Kettlemark's server for ALE: findings, hover, completion, fixes, renaming.
call ale#Set('kettlemark_java', 'java')
call ale#Set('kettlemark_jar', '')
call ale#Set('kettlemark_jvm_arguments', '-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:CompileThresholdScaling=0.1 -Xms24m -Xmx256m')

function! s:command(buffer) abort
  return '%e ' .. ale#Var(a:buffer, 'kettlemark_jvm_arguments')
        \ .. ' -jar ' .. ale#Escape(expand(ale#Var(a:buffer, 'kettlemark_jar'))) .. ' serve'
endfunction

" No executable, no server: ALE then says in :ALEInfo what is missing.
function! s:executable(buffer) abort
  return filereadable(expand(ale#Var(a:buffer, 'kettlemark_jar')))
        \ ? ale#Var(a:buffer, 'kettlemark_java') : ''
endfunction

call ale#linter#Define('kettlemark', {
      \ 'name': 'kettlemark',
      \ 'lsp': 'stdio',
      \ 'executable': function('s:executable'),
      \ 'command': function('s:command'),
      \ 'project_root': {buffer -> kettlemark#root(fnamemodify(bufname(buffer), ':p:h'))},
      \ 'language': 'kettlemark',
      \ })
