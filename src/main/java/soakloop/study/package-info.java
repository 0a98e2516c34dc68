/** Many runs, one question each; the smallest study is one run beside its log. */
@NullMarked
package soakloop.study;

import org.jspecify.annotations.NullMarked;
