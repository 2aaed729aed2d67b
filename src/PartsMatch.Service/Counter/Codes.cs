using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Counter;

/// <summary>The codes that programs can rely on, all of them; docs/api.md lists them with what to do.</summary>
public static class Codes
{
    // What was typed
    public const string UnknownField = ComplaintCode.UnknownField;
    public const string Unreadable = ComplaintCode.Unreadable;
    public const string GivenTwice = ComplaintCode.GivenTwice;
    public const string TooLong = ComplaintCode.TooLong;
    public const string Empty = ComplaintCode.Empty;
    public const string NothingRead = ComplaintCode.NothingRead;
    public const string Ambiguous = ComplaintCode.Ambiguous;

    // What was asked for
    public const string PartNotFound = "PART_NOT_FOUND";
    public const string KindMismatch = "KIND_MISMATCH";
    public const string FirstOutOfRange = "FIRST_OUT_OF_RANGE";
    public const string ListTooLong = "LIST_TOO_LONG";
    public const string ShareOutOfRange = "SHARE_OUT_OF_RANGE";
    public const string CursorMalformed = "CURSOR_MALFORMED";
    public const string CursorExpired = "CURSOR_EXPIRED";
    public const string NumberUnusable = "NUMBER_UNUSABLE";

    // What became of a part
    public const string IdUnusable = "ID_UNUSABLE";
    public const string IdTaken = "ID_TAKEN";
    public const string DayToCome = "DAY_TO_COME";
    public const string ReasonUnneeded = "REASON_UNNEEDED";
    public const string OutcomeNotFound = "OUTCOME_NOT_FOUND";
    public const string AlreadyCorrected = "ALREADY_CORRECTED";

    // What a table holds
    public const string NotATable = "NOT_A_TABLE";
    public const string ColumnMissing = "COLUMN_MISSING";
    public const string RowMalformed = "ROW_MALFORMED";
    public const string ChangedSince = "CHANGED_SINCE";

    // Who asks
    public const string KeyNeeded = "KEY_NEEDED";
    public const string KeyWrong = "KEY_WRONG";

    // How it was asked
    public const string RequestMalformed = "REQUEST_MALFORMED";
    public const string MethodNotAllowed = "METHOD_NOT_ALLOWED";
    public const string MediaTypeUnsupported = "MEDIA_TYPE_UNSUPPORTED";
    public const string NotAcceptable = "NOT_ACCEPTABLE";
    public const string NoSuchPage = "NO_SUCH_PAGE";
    public const string RequestTooLarge = "REQUEST_TOO_LARGE";
    public const string QueryUnreadable = "QUERY_UNREADABLE";
    public const string QueryInvalid = "QUERY_INVALID";
    public const string VariablesInvalid = "VARIABLES_INVALID";
    public const string QueryTooLong = "QUERY_TOO_LONG";
    public const string QueryTooDeep = "QUERY_TOO_DEEP";
    public const string QueryTooCostly = "QUERY_TOO_COSTLY";
    public const string TooSlow = "TOO_SLOW";

    // What is wrong here
    public const string StoreFailed = "STORE_FAILED";
    public const string Internal = "INTERNAL";
}
