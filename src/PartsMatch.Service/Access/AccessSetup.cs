using Microsoft.AspNetCore.CookiePolicy;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.DataProtection.Repositories;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Access;

/// <summary>Keys, signing in with them, and cookies.</summary>
internal static class AccessSetup
{
    /// <summary>The input of a form that holds the proof that it came from a page of this service.</summary>
    public const string FormToken = "token";

    private const string Sealing = "Microsoft.AspNetCore.DataProtection.KeyManagement.XmlKeyManager";

    public static void AddAccess(this WebApplicationBuilder builder)
    {
        var services = builder.Services;
        services.AddOptions<AccessSettings>().BindConfiguration(AccessSettings.Section);
        services.AddSingleton<KeyRing>().AddSingleton<OneTimeCode>().AddSingleton<EndedVisits>().AddSingleton<SignInAttempts>();
        services.AddAuthentication(SignInCookie.Name).AddCookie(SignInCookie.Name, SignInCookie.Configure);
        services.AddAntiforgery(forms =>
        {
            forms.FormFieldName = FormToken;
            forms.Cookie.Name = "form";
            forms.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
            // Not Strict: a page opened from a message would come without it, be given another, and spoil the forms of the tabs that are open.
            forms.Cookie.SameSite = SameSiteMode.Lax;
            // The content policy says the same of frames, and says none where this header would say our own.
            forms.SuppressXFrameOptionsHeader = true;
        });

        services.AddDataProtection().SetApplicationName("PartsMatch");
        services.AddOptions<KeyManagementOptions>().Configure<DataFolder, ILoggerFactory>((options, folder, logs) => options.XmlRepository = new FileSystemXmlRepository(folder.CookieKeys(), logs));
        // It warns that what cookies are sealed with lies unencrypted on the disk. So does the catalogue beside it: the folder is closed to others instead.
        builder.Logging.AddFilter(Sealing, LogLevel.Error);
    }

    public static void UseAccess(this WebApplication app)
    {
        app.UseCookiePolicy(new CookiePolicyOptions
        {
            HttpOnly = HttpOnlyPolicy.Always,
            MinimumSameSitePolicy = SameSiteMode.Lax,
            OnAppendCookie = appended => appended.CookieOptions.Secure |= IsBehindTls(appended.Context.Request),
        });
        app.UseAuthentication();
        app.UseMiddleware<AccessGate>();
    }

    /// <summary>The one thing for which a proxy's word is taken: whoever makes it up only keeps a cookie of their own from plain HTTP, and spoils their own links.</summary>
    public static bool IsBehindTls(HttpRequest request) =>
        request.IsHttps
        || request.Headers["X-Forwarded-Proto"].ToString().StartsWith("https", StringComparison.OrdinalIgnoreCase)
        || request.Headers["Forwarded"].ToString().Contains("proto=https", StringComparison.OrdinalIgnoreCase);
}
