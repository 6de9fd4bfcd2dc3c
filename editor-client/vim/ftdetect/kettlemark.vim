autocmd BufNewFile,BufRead *.kettle setfiletype kettlemark
