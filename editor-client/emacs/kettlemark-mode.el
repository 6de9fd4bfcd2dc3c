;;; kettlemark-mode.el --- Technical recipes as text -*- lexical-binding: t; -*-

;; SPDX-License-Identifier: Apache-2.0
;; Package-Requires: ((emacs "26.3"))

;;; Commentary:

;; Colours, comments and words of Kettlemark, and its server for Eglot and for M-x compile.
;;
;;     (add-to-list 'load-path "/path/to/editor-client/emacs")
;;     (require 'kettlemark-mode)
;;     (setq kettlemark-jar "/path/to/kettlemark.jar")
;;     (add-hook 'kettlemark-mode-hook #'eglot-ensure)
;;
;; Scaling and the table are code actions: M-x eglot-code-actions, or `kettlemark-scale' and
;; `kettlemark-show'.

;;; Code:

(require 'cl-lib)
(require 'subr-x)

(defgroup kettlemark nil
  "Technical recipes as text."
  :group 'languages)

(defcustom kettlemark-java "java"
  "Java 17 or newer, by which the server is run."
  :type 'string)

(defcustom kettlemark-jar nil
  "The server, kettlemark.jar."
  :type '(choice (const nil) file))

(defcustom kettlemark-jvm-arguments
  '("-XX:+UseSerialGC" "-XX:TieredStopAtLevel=1" "-XX:CompileThresholdScaling=0.1"
    "-Xms24m" "-Xmx256m")
  "Arguments of the Java runtime."
  :type '(repeat string))

;; Words of the language; `npm run syntaxes' writes them.
(defconst kettlemark-sections
  '("formula" "house" "ingredient" "product" "sheet" "stage" "trial"
    "variant"))
(defconst kettlemark-verbs
  '("blend" "boil" "bottom" "check" "cook" "cool" "cut" "deposit" "dip"
    "disperse" "dry" "dust" "enrobe" "fold" "hold" "hydrate" "keep" "mix"
    "never" "pack" "pipe" "pour" "rest" "set" "sift" "soak" "spread"
    "sprinkle" "stand" "stream" "temper" "warm" "weigh" "whip"))
(defconst kettlemark-facts
  '("DE" "accept" "activates" "add" "allergen" "allergens-on-site"
    "altitude" "author" "basis" "batch" "bloom" "bowl" "caution" "centre"
    "change" "changed" "claim" "coagulates" "coat" "code" "contains"
    "currency" "density" "disperses" "drop" "expect" "filling" "form"
    "frame" "gels-with" "gluten" "hydrates" "kept" "label" "language"
    "layer" "loss" "lot" "make" "makes" "market" "may-contain" "measured"
    "melts" "mould" "names" "needs" "note" "pack" "pan" "percent" "photo"
    "price" "replace" "reversible" "reviewed" "role" "room" "saturates"
    "scale" "scored" "sets" "shelf" "show" "spare" "stands-in-for" "status"
    "suits" "supplier" "tempers" "texture" "thermometer" "threshold"
    "title" "tolerates" "tool" "traits" "use" "verdict" "version" "wafer"
    "withdraw"))
(defconst kettlemark-states
  '("bloomed" "caramel" "clear" "cool" "dissolved" "dry" "firm-ball"
    "firm-peak" "foam" "gelled" "hard-ball" "hard-crack" "hydrated"
    "light-caramel" "lump-free" "ribbon" "set" "skinned" "soft-ball"
    "soft-crack" "soft-peak" "stiff-peak" "tacky" "tempered" "thread"
    "wet-mix"))
(defconst kettlemark-figures
  '("density" "doctor-share" "dry-glass-transition" "energy"
    "glass-transition" "grained-water-activity" "moisture" "overrun"
    "sucrose-per-water" "supersaturation" "sweetness" "texture" "volume"
    "water-activity" "yield"))
(defconst kettlemark-connectives
  '("above" "at" "below" "between" "by" "for" "from" "in" "into" "of" "on"
    "over" "per" "to" "under" "until" "while" "with" "within"))
(defconst kettlemark-amounts
  '("all" "part" "q.s."))
(defconst kettlemark-units
  '("%" "%RH" "Brix" "L" "aw" "cm" "cup" "cups" "day" "days" "degC" "degF"
    "each" "fl-oz" "g" "g/mL" "h" "kg" "lb" "m" "mL" "mg" "min" "mm"
    "month" "months" "oz" "pH" "piece" "pieces" "ppm" "s" "tbsp" "tsp"
    "week" "weeks" "°C" "°F"))
;; End of the words.

(defconst kettlemark--rest "[[:alnum:]_'’-]"
  "What may follow within a name.")

(defun kettlemark--head (words)
  "What finds one of WORDS at the start of a line."
  (concat "^[ \t]*\\(" (regexp-opt words) "\\)\\_>"))

(defvar kettlemark-font-lock-keywords
  `((,(concat (kettlemark--head kettlemark-sections)
              "\\(?:[ \t]+\\([[:alpha:]]" kettlemark--rest "*\\)\\)?")
     (1 font-lock-keyword-face)
     (2 font-lock-type-face nil t))
    (,(kettlemark--head kettlemark-verbs) 1 font-lock-function-name-face)
    (,(kettlemark--head kettlemark-facts) 1 font-lock-builtin-face)
    (,(concat "^[ \t]*" (regexp-opt '("expect" "measured" "withdraw")) "\\_>")
     (,(concat "\\_<" (regexp-opt kettlemark-figures) "\\_>") nil nil (0 font-lock-constant-face)))
    (,(concat "\\_<until[ \t]+\\(" (regexp-opt kettlemark-states) "\\)\\_>")
     1 font-lock-constant-face)
    (,(concat "\\_<" (regexp-opt kettlemark-connectives) "\\_>") . font-lock-keyword-face)
    ;; An abbreviation ends with a point, so it cannot end as a word does.
    (,(concat "\\_<" (regexp-opt kettlemark-amounts)) . font-lock-builtin-face)
    (,(concat "[0-9][ \t]*\\(" (regexp-opt kettlemark-units) "\\)\\(?:[^[:alnum:]]\\|$\\)")
     1 font-lock-type-face))
  "Colours of Kettlemark where the editor takes no semantic tokens from the server.")

(defvar kettlemark-mode-syntax-table
  (let ((table (make-syntax-table)))
    (modify-syntax-entry ?# "<" table)
    (modify-syntax-entry ?\n ">" table)
    (modify-syntax-entry ?\" "\"" table)
    (modify-syntax-entry ?\\ "." table)
    ;; Names carry hyphens and apostrophes.
    (modify-syntax-entry ?- "_" table)
    (modify-syntax-entry ?' "_" table)
    (modify-syntax-entry ?’ "_" table)
    table))

;;;###autoload
(define-derived-mode kettlemark-mode prog-mode "Kettlemark"
  "Major mode for formulas of Kettlemark."
  (setq-local comment-start "# ")
  (setq-local comment-start-skip "#+[ \t]*")
  (setq-local font-lock-defaults '(kettlemark-font-lock-keywords))
  ;; Lines are laid out by the server's formatter.
  (setq-local indent-line-function (lambda () 'noindent))
  (setq-local electric-indent-inhibit t)
  (setq-local indent-tabs-mode nil)
  (when (and kettlemark-jar buffer-file-name)
    (setq-local compile-command
                (mapconcat #'shell-quote-argument
                           (list kettlemark-java "-jar" (expand-file-name kettlemark-jar)
                                 "check" "--format" "line" default-directory)
                           " "))))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\.kettle\\'" . kettlemark-mode))

(defconst kettlemark--oldest-java 17)

(defun kettlemark--java-version ()
  "The feature version of `kettlemark-java'; nil where it does not work."
  (with-temp-buffer
    (when (and (eql 0 (ignore-errors (call-process kettlemark-java nil t nil "-version")))
               (progn (goto-char (point-min))
                      ;; Java 8 and older call themselves 1.8.
                      (re-search-forward "version \"\\(?:1\\.\\)?\\([0-9]+\\)" nil t)))
      (string-to-number (match-string 1)))))

(defun kettlemark-server-command (&rest _)
  "The command line of the server."
  (unless kettlemark-jar
    (user-error "Set `kettlemark-jar' to the path of kettlemark.jar"))
  (unless (executable-find kettlemark-java)
    (user-error "Kettlemark needs Java %d or newer and found no program %s"
                kettlemark--oldest-java kettlemark-java))
  (let ((version (kettlemark--java-version)))
    (cond ((null version)
           (user-error "Kettlemark found no working Java at %s" kettlemark-java))
          ((< version kettlemark--oldest-java)
           (user-error "Kettlemark needs Java %d or newer and found Java %d at %s"
                       kettlemark--oldest-java version kettlemark-java))))
  (append (list kettlemark-java) kettlemark-jvm-arguments
          (list "-jar" (expand-file-name kettlemark-jar) "serve")))

(defvar eglot-server-programs)
(declare-function eglot-current-server "eglot")
(declare-function jsonrpc-request "jsonrpc")
(declare-function eglot--apply-workspace-edit "eglot")

(with-eval-after-load 'eglot
  (add-to-list 'eglot-server-programs '(kettlemark-mode . kettlemark-server-command)))

;; The library is the folder, even where no version control says so.
(defun kettlemark-project (folder)
  "The project of FOLDER where formulas lie."
  (when (directory-files folder nil "\\.kettle\\'" t)
    (cons 'kettlemark (file-name-as-directory (expand-file-name folder)))))

(with-eval-after-load 'project
  (add-hook 'project-find-functions #'kettlemark-project 90)
  (cl-defmethod project-root ((project (head kettlemark)))
    (cdr project)))

(defun kettlemark--formula ()
  "The name of the formula or variant at point."
  (save-excursion
    (end-of-line)
    (if (re-search-backward "^\\(?:formula\\|variant\\)[ \t]+\\([^ \t\n]+\\)" nil t)
        (match-string-no-properties 1)
      (user-error "There is no formula at point"))))

(defun kettlemark--uri ()
  "The address of this text."
  (plist-get (funcall (intern "eglot--TextDocumentIdentifier")) :uri))

(defun kettlemark--execute (command argument)
  "The server's answer to COMMAND with ARGUMENT."
  (jsonrpc-request (or (eglot-current-server) (user-error "No server reads this text"))
                   :workspace/executeCommand
                   `(:command ,command :arguments [,argument])))

(defun kettlemark--page (name text)
  "Show TEXT in a window of its own called NAME."
  (with-current-buffer (get-buffer-create (format "*%s*" name))
    (let ((inhibit-read-only t))
      (erase-buffer)
      (insert text)
      (goto-char (point-min)))
    (special-mode)
    (display-buffer (current-buffer))))

(defun kettlemark-show (formula)
  "Show FORMULA, the one at point, as a table."
  (interactive (list (kettlemark--formula)))
  (kettlemark--page formula (kettlemark--execute "kettlemark.show"
                                                 `(:uri ,(kettlemark--uri) :formula ,formula))))

(defun kettlemark-changes ()
  "Show what the unsaved texts of the library would change."
  (interactive)
  (kettlemark--page "Unsaved changes" (kettlemark--execute "kettlemark.changes"
                                                           `(:uri ,(kettlemark--uri)))))

(defun kettlemark-explain-rule (rule)
  "Show the page of RULE."
  (interactive "sRule: ")
  (kettlemark--page rule (kettlemark--execute "kettlemark.explainRule" `(:rule ,rule))))

(defun kettlemark-scale (formula grams)
  "Take FORMULA, the one at point, to a charge of GRAMS; show the weighing list first."
  (interactive (list (kettlemark--formula) (read-number "Charge in grams: ")))
  (let* ((tick (buffer-chars-modified-tick))
         (answer (kettlemark--execute
                  "kettlemark.scale"
                  `(:uri ,(kettlemark--uri) :formula ,formula
                    :target (:kind "charge" :grams ,grams)))))
    (kettlemark--page (concat "Weighing list of " formula) (plist-get answer :weighingList))
    (when (y-or-n-p (concat (plist-get answer :title) "? "))
      (if (/= tick (buffer-chars-modified-tick))
          (user-error "The text has changed meanwhile; scale again")
        (kettlemark--apply (plist-get answer :edit))))))

(defun kettlemark--apply (edit)
  "Apply the workspace EDIT of the server."
  ;; Eglot's newer versions want to know who asks.
  (if (> (car (func-arity 'eglot--apply-workspace-edit)) 1)
      (with-no-warnings (eglot--apply-workspace-edit edit 'kettlemark))
    (eglot--apply-workspace-edit edit)))

(provide 'kettlemark-mode)
;;; kettlemark-mode.el ends here
