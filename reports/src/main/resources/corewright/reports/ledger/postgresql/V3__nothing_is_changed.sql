CREATE FUNCTION nothing_is_changed() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION '% are never changed and never removed', TG_ARGV[0]; END $$;

CREATE TRIGGER event_is_never_changed BEFORE UPDATE OR DELETE ON event
FOR EACH ROW EXECUTE FUNCTION nothing_is_changed('events');
CREATE TRIGGER event_is_never_emptied BEFORE TRUNCATE ON event
FOR EACH STATEMENT EXECUTE FUNCTION nothing_is_changed('events');
CREATE TRIGGER content_is_never_changed BEFORE UPDATE OR DELETE ON content
FOR EACH ROW EXECUTE FUNCTION nothing_is_changed('stored texts');
CREATE TRIGGER content_is_never_emptied BEFORE TRUNCATE ON content
FOR EACH STATEMENT EXECUTE FUNCTION nothing_is_changed('stored texts');
