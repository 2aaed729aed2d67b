namespace PartsMatch.Service.Pages.Errors;

/// <summary>What went wrong, and what to do about it.</summary>
/// <param name="Status">As the answer has it.</param>
/// <param name="Message">The sentence that programs are told, too.</param>
public sealed record ErrorModel(int Status, string Message)
{
    public static IResult Page(int status, string message) => PageSetup.Page<ErrorPage>(new ErrorModel(status, message), status);

    public string Title => Status switch
    {
        StatusCodes.Status401Unauthorized => "A key is needed",
        StatusCodes.Status404NotFound => "There is nothing here",
        StatusCodes.Status405MethodNotAllowed => "This address is asked in another way",
        StatusCodes.Status413PayloadTooLarge => "That is too much at once",
        StatusCodes.Status414UriTooLong => "This address is too long",
        StatusCodes.Status429TooManyRequests => "Too often",
        >= StatusCodes.Status500InternalServerError => "Something went wrong here",
        _ => "This cannot be answered",
    };

    public string WhatToDo => Status switch
    {
        StatusCodes.Status401Unauthorized => "Sign in, and try again.",
        StatusCodes.Status404NotFound => "A link may be cut short, or mistyped. This is what there is:",
        StatusCodes.Status405MethodNotAllowed => "Begin again from one of these pages:",
        StatusCodes.Status413PayloadTooLarge => "Go back, and send less: a plate's text is a few lines.",
        StatusCodes.Status414UriTooLong => FormattableString.Invariant($"A link of this service has at most {Link.Longest} characters. If this one was made by hand, begin at one of these pages, and type or paste what it holds there: forms take more."),
        StatusCodes.Status429TooManyRequests => "Wait a little, and try again.",
        >= StatusCodes.Status500InternalServerError => "Go back and try again. If it happens again, tell the number above to whoever runs this service.",
        _ => "Go back, load the page again, and send it again.",
    };

    /// <summary>Whether it helps to know what pages there are.</summary>
    public bool ShowsPages => Status is StatusCodes.Status404NotFound or StatusCodes.Status405MethodNotAllowed or StatusCodes.Status414UriTooLong;
}
